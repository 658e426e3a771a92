/**
 * Runs in the page: finds what can be pressed, each control once, and looks at what a press has made.
 * Handed to the page as a whole, so it may use nothing from outside itself.
 */

export interface Control {
  /** what it is, where it stands and what it is called, numbers left out */
  key: string;
  kind: string;
  x: number;
  y: number;
  /** another thing lies over its middle */
  covered: boolean;
  /** of a choice, the present one last */
  options: string[];
  /** a link that would lead away from the page; empty where it is none */
  leadsTo: string;
  /** pressed again it is as it was */
  toggles: boolean;
}

export interface Look {
  troubles: string[];
  /** number and name of the step that could be taken back; empty where there is none */
  undo: string;
  layer: "page" | "dialog" | "menu" | "popover";
  place: string;
}

export interface Finder {
  next: () => Control | null;
  look: () => Promise<Look>;
  settle: () => Promise<void>;
  choose: (option: string) => boolean;
  forget: (keys: string[]) => void;
  pressed: () => string[];
}

export function installFinder() {
  const PRESSABLE =
    "button, summary, select, a[href], input[type=checkbox], input[type=radio], [role=tab], [role^=menuitem]";
  const RAW = /\bNaN\b|undefined|Infinity|\[object/;
  const CONTAINED = /[^.]*could not be (shown|loaded)\.[^.]*/;
  const done = new Set<string>();
  const names = new WeakMap<Element, string>();
  const complaints: string[] = [];
  let last: Element | null = null;

  const screen = window.console;
  const complain = screen.error.bind(screen);
  screen.error = (...words: unknown[]) => {
    complaints.push(words.map(String).join(" ").slice(0, 300));
    complain(...words);
  };
  window.addEventListener("error", (event) => complaints.push(`uncaught: ${event.message}`));
  window.addEventListener("unhandledrejection", (event) => complaints.push(`unhandled: ${event.reason}`));
  window.print = () => undefined;

  /** A press is answered within its own task, a popover within the next; a later complaint is met at the next look. */
  const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

  const dialog = () => document.querySelector("dialog[open]");
  const menu = () => document.querySelector("[role=menu]");
  const popover = () => document.querySelector(":popover-open");
  const layer = () => (dialog() ? "dialog" : menu() ? "menu" : popover() ? "popover" : "page");

  const nameOf = (element: Element) => {
    const labelled = element.getAttribute("aria-label") ?? element.closest("label")?.textContent;
    const text = labelled ?? element.textContent ?? "";
    const words = text.replace(/^(Undo|Redo) .*/, "$1").replace(/[-−\d.,·⁰-⁹\s]+/g, " ");
    return words.trim().slice(0, 70);
  };

  const whereOf = (element: Element) => {
    // the same input stands in many popovers
    if (element.closest("[popover]")) return "popover";
    const region = element.closest(
      "[role=tabpanel], [role=menu], section, article, dialog, details, header, main",
    );
    const heading =
      region?.getAttribute("aria-label") ?? region?.querySelector("h2, h3, summary")?.textContent;
    return (heading ?? region?.tagName.toLowerCase() ?? "page").replace(/[\d.,\s]+/g, " ").slice(0, 40);
  };

  const kindOf = (element: Element) => {
    if (element.matches("[popovertarget]")) return /^About /.test(nameOf(element)) ? "help" : "popover";
    if (element.matches("[aria-haspopup=menu]")) return "menu";
    const role = element.getAttribute("role");
    if (role) return role.replace("menuitemradio", "menuitem");
    if (element.matches("input")) return element.getAttribute("type") ?? "input";
    if (element.hasAttribute("aria-pressed")) return "legend";
    return element.tagName.toLowerCase();
  };

  const usable = (element: Element) =>
    element.checkVisibility({ visibilityProperty: true }) &&
    !element.matches(":disabled, [aria-disabled=true]") &&
    (!element.closest("[popover]") || element.closest(":popover-open") !== null);

  /** What leads away comes last, so that everything before it has been seen. */
  const rank = (element: Element) => {
    if (/^Back to/.test(nameOf(element))) return 9;
    if (/^(Build sheet|Theory|Versions)/.test(nameOf(element))) return 8;
    return element.matches("[role=tab]") ? 7 : 1;
  };

  const within = (): Element => dialog() ?? menu() ?? document.body;

  const found = () => {
    const counts = new Map<string, number>();
    const scope = [...within().querySelectorAll(PRESSABLE)].filter(usable);
    return scope.map((element) => {
      const start = names.get(element) ?? `${kindOf(element)} “${nameOf(element)}” in ${whereOf(element)}`;
      names.set(element, start);
      const count = (counts.get(start) ?? 0) + 1;
      counts.set(start, count);
      // a popover's inputs and the many alike of a list are met once
      const key = count === 1 || element.closest("[popover]") ? start : `${start}, number ${count}`;
      return { element, key };
    });
  };

  const unmet = () => found().filter(({ key }) => !done.has(key));

  /** What is in an open popover comes first; then the popover goes, for it lies over others. */
  const waiting = () => {
    const open = popover();
    if (!open) return unmet();
    const inside = unmet().filter(({ element }) => open.contains(element));
    if (inside.length > 0) return inside;
    if (open instanceof HTMLElement) open.hidePopover();
    return unmet();
  };

  const next = () => {
    const best = waiting().reduce<ReturnType<typeof found>[number] | null>(
      (first, each) => (first && rank(first.element) <= rank(each.element) ? first : each),
      null,
    );
    if (!best) return null;
    const { element, key } = best;
    done.add(key);
    last = element;
    const target = element.closest("label") ?? element;
    target.scrollIntoView({ block: "center", inline: "center" });
    const box = target.getBoundingClientRect();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const hit = document.elementFromPoint(x, y);
    const details = element.matches("summary") ? element.closest("details") : null;
    return {
      key,
      kind: kindOf(element),
      x,
      y,
      covered: !(hit && (target.contains(hit) || hit.contains(target))),
      leadsTo: element instanceof HTMLAnchorElement && element.hash === "" ? element.href : "",
      options: element instanceof HTMLSelectElement ? optionsOf(element) : [],
      toggles:
        element.matches("input[type=checkbox], [aria-pressed], [aria-expanded]:not([aria-haspopup])") ||
        details?.open === true,
    };
  };

  const optionsOf = ({ options, value: present }: HTMLSelectElement) => {
    const all = [...options].map(({ value }) => value);
    return [...all.filter((value) => value !== present), present];
  };

  const choose = (option: string) => {
    const select = last instanceof HTMLSelectElement && last.isConnected ? last : null;
    if (!select || ![...select.options].some(({ value, disabled }) => value === option && !disabled))
      return false;
    select.value = option;
    select.dispatchEvent(new Event("change", { bubbles: true }));
    return true;
  };

  /** A view that has come into sight is whole once no more controls join it. */
  const settle = async () => {
    let [count, still] = [-1, 0];
    for (let waits = 0; waits < 100 && still < 5; waits++) {
      await pause(40);
      const now = document.querySelectorAll(PRESSABLE).length;
      still = now === count && !/Loading the .+ …/.test(document.body.innerText) ? still + 1 : 0;
      count = now;
    }
  };

  const look = async () => {
    await pause(0);
    const text = document.body.innerText;
    const troubles = complaints.splice(0);
    const raw = RAW.exec(text);
    if (raw) troubles.push(`the page says “${text.slice(Math.max(0, raw.index - 60), raw.index + 30)}”`);
    const contained = CONTAINED.exec(text);
    if (contained) troubles.push(contained[0].trim());
    const main = [...document.querySelectorAll("main")].find((each) => each.checkVisibility());
    if (!main || main.innerText.trim().length < 40) troubles.push("the page is empty");
    const undo = [...document.querySelectorAll("button")].find((button) =>
      /^Undo /.test(button.ariaLabel ?? ""),
    );
    return {
      troubles,
      undo: undo && !undo.disabled ? (undo.ariaLabel ?? "") : "",
      layer: layer(),
      place: window.location.hash,
    };
  };

  const finder: Finder = {
    next,
    look: look as Finder["look"],
    settle,
    choose,
    forget: (keys) => {
      for (const key of keys) done.delete(key);
    },
    pressed: () => [...done],
  };
  Object.assign(window, { finder });
}
