import { configure } from "@testing-library/react";

/** What the app uses of a browser and jsdom does not have. */
export function addBrowserParts() {
  // jsdom takes seconds to find out what is hidden among a hundred fields
  configure({ defaultHidden: true });
  window.matchMedia ??= (query: string) =>
    Object.assign(new EventTarget(), {
      matches: query.includes("min-width"),
      media: query,
      onchange: null,
      addListener: () => undefined,
      removeListener: () => undefined,
    }) as MediaQueryList;
  HTMLDialogElement.prototype.showModal ??= function showModal(this: HTMLDialogElement) {
    this.open = true;
  };
  HTMLDialogElement.prototype.close ??= function close(this: HTMLDialogElement) {
    if (!this.open) return;
    this.open = false;
    this.dispatchEvent(new Event("close"));
  };
}
