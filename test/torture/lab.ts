/** Where the rows of the torture find what they try things on. */
import { type Browser, type BrowserContext, chromium } from "playwright-core";
import { type Launching, launching } from "../browser/support/launching";

export interface WindowSize {
  width: number;
  height: number;
}

/** The size at which the program is used most. */
export const DESKTOP: WindowSize = { width: 1440, height: 900 };
/** No charts at the start, so a page is there in half the time. */
export const PHONE: WindowSize = { width: 390, height: 844 };

export interface Lab {
  /** address of the production build, ending in a slash */
  address: string;
  /** px; what a row tries it tries in windows of this size, unless the size is what it tries */
  window: WindowSize;
  /** how a browser of its own is started, as with a profile that outlives it */
  launch: Launching;
  /** a context of the shared browser with an empty storage; the row closes it */
  newContext(): Promise<BrowserContext>;
}

/** A lab over a build that is served; the browser that its contexts share starts with the first. */
export function newLab(address: string, window: WindowSize): Lab & { close(): Promise<void> } {
  let browser: Promise<Browser> | undefined;
  const launch = launching();
  return {
    address,
    window,
    launch,
    async newContext() {
      browser ??= chromium.launch(launch);
      return (await browser).newContext({
        viewport: window,
        locale: "en-GB",
        timezoneId: "UTC",
        // it would bring back what a row cuts off, and keep the whole program for each context
        serviceWorkers: "block",
      });
    },
    close: async () => (await browser)?.close(),
  };
}
