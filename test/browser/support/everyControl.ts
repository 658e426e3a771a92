/** Presses everything that can be pressed on a page, each control once, and says what went wrong after which. */
import type { Page } from "playwright-core";
import { type Control, type Finder, installFinder, type Look } from "./controlFinder";

export interface Walk {
  pressed: number;
  /** how many of each kind */
  kinds: Record<string, number>;
  /** what was pressed and what came of it, one line each */
  troubles: string[];
}

type Windowed = Window & { finder: Finder };

const next = (page: Page) => page.evaluate(() => (window as unknown as Windowed).finder.next());
const settle = (page: Page) => page.evaluate(() => (window as unknown as Windowed).finder.settle());
const look = (page: Page) => page.evaluate(() => (window as unknown as Windowed).finder.look());

/** ms that a changed design is given to be evaluated before it is looked at */
const EVALUATED = 80;

/** Presses of a walk; beyond it something makes controls without end. */
const MOST = 3000;

class Walker {
  readonly walk: Walk = { pressed: 0, kinds: {}, troubles: [] };
  /** what led to the layer that lies over the page: pressed again while that holds more */
  private ways: string[] = [];

  constructor(
    private readonly page: Page,
    private readonly undoAtFirst: string,
  ) {}

  private note(control: Control, state: Look) {
    for (const trouble of state.troubles) this.walk.troubles.push(`${control.key}: ${trouble}`);
  }

  private async click({ x, y, covered, key }: Control) {
    if (covered) this.walk.troubles.push(`${key}: lies under something else`);
    await this.page.mouse.click(x, y);
  }

  /** Takes back what was changed, so that each control meets the same design. */
  private async takeBack(control: Control, state: Look): Promise<Look> {
    let now = state;
    if (now.undo !== this.undoAtFirst && now.layer === "page") {
      await this.page.waitForTimeout(EVALUATED);
      now = await look(this.page);
      this.note(control, now);
    }
    for (let steps = 0; now.undo !== this.undoAtFirst && now.layer === "page" && steps < 8; steps++) {
      await this.page.keyboard.press("Control+z");
      now = await look(this.page);
      this.note(control, now);
    }
    return now;
  }

  private async chooseEach(control: Control) {
    for (const option of control.options) {
      const chosen = await this.page.evaluate(
        (value) => (window as unknown as Windowed).finder.choose(value),
        option,
      );
      if (!chosen) continue;
      const state = await look(this.page);
      this.note(control, state);
      await this.takeBack(control, state);
    }
  }

  /** How the page stands after a press; another view or place is given the time to come. */
  private async arrive({ kind }: Control, before: Look): Promise<Look> {
    const state = await look(this.page);
    if (kind !== "tab" && state.place === before.place) return state;
    await settle(this.page);
    return look(this.page);
  }

  /** What lies over the page and holds nothing more is put away. */
  private async close(layer: Look["layer"]) {
    await this.page.keyboard.press("Escape");
    const state = await look(this.page);
    if (state.layer === "dialog" && layer === "dialog")
      await this.page.locator("dialog[open]").getByRole("button").last().click();
  }

  /** @returns how the page stands afterwards */
  private async press(control: Control, before: Look): Promise<Look> {
    this.walk.pressed += 1;
    this.walk.kinds[control.kind] = (this.walk.kinds[control.kind] ?? 0) + 1;
    if (control.leadsTo !== "") {
      const there = await this.page.request.get(control.leadsTo);
      if (!there.ok()) this.walk.troubles.push(`${control.key}: leads to nothing`);
      return before;
    }
    if (control.options.length > 0) {
      await this.chooseEach(control);
      return look(this.page);
    }
    if (before.layer === "page") this.ways = [];
    this.ways = [...this.ways, control.key];
    await this.click(control);
    const state = await this.arrive(control, before);
    this.note(control, state);
    const after = await this.takeBack(control, state);
    const leftLayer =
      before.layer === "menu" || before.layer === "dialog" ? after.layer !== before.layer : false;
    if (leftLayer)
      await this.page.evaluate(
        (keys) => (window as unknown as Windowed).finder.forget(keys),
        this.ways.slice(0, -1),
      );
    if (control.toggles && after.undo === state.undo && state.layer === before.layer) {
      await this.click(control);
      const again = await look(this.page);
      this.note(control, again);
      return again;
    }
    return after;
  }

  async run(most: number) {
    let state = await look(this.page);
    while (this.walk.pressed < most) {
      const control = await next(this.page);
      if (control)
        state = await this.press(control, state).catch((error) => {
          throw new Error(`${control.key}: ${error}`);
        });
      else if (state.layer === "page" || state.layer === "popover") break;
      else {
        await this.close(state.layer);
        state = await look(this.page);
      }
    }
  }
}

/**
 * Walks over the whole page, whatever view stands in front. Downloads and choosers of files are let come.
 * @param most presses after which it ends
 */
export async function pressEveryControl(page: Page, most = MOST): Promise<Walk> {
  page.on("filechooser", () => undefined);
  await page.evaluate(installFinder);
  await settle(page);
  const walker = new Walker(page, (await look(page)).undo);
  await walker.run(most);
  return walker.walk;
}
