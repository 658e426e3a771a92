// @vitest-environment node
import fc from "fast-check";
import { afterEach, beforeEach, describe, it, vi } from "vitest";
import type { Show } from "../../../src/design/show";
import { Disk, FakeDatabase } from "../fakeDatabase";
import { MemoryStorage, newBench } from "../fakes";

/** A browser with tabs that edit one number, and everything that has ever been called saved in it. */
class Browser {
  storage = new MemoryStorage();
  readonly disk = new Disk();
  tabs: { bench: ReturnType<typeof newBench>; database: FakeDatabase }[] = [];
  private snapshots: Map<string, string>[] = [];
  private turns = 1480;
  /** of each number the one that it was typed over */
  private readonly parents = new Map<number, number>();
  private readonly promised = new Set<number>();

  open(byHand = true) {
    const database = new FakeDatabase(this.disk);
    const bench = newBench(this.storage, undefined, database.found());
    database.byHand = byHand;
    this.tabs.push({ bench, database });
    return this.tabs[this.tabs.length - 1];
  }
  tab(index: number) {
    return this.tabs.length > 0 ? this.tabs[index % this.tabs.length] : this.open();
  }
  edit(index: number) {
    const { bench } = this.tab(index);
    this.turns += 1;
    this.parents.set(this.turns, bench.open().secondary.turns);
    bench.actions.setValue("secondary.turns", this.turns);
  }
  async rest(time: number) {
    await vi.advanceTimersByTimeAsync(time);
    for (const { bench } of this.tabs)
      if (bench.state().saveState === "saved") this.promised.add(bench.open().secondary.turns);
    this.snapshots.push(new Map(this.storage.entries));
  }
  async commit(index: number, count: number) {
    const { database } = this.tab(index);
    for (let turn = 0; turn < count; turn++) {
      database.next();
      await vi.advanceTimersByTimeAsync(0);
    }
  }
  /** Everything that waits is done, in every tab. */
  async finish() {
    for (const { database } of this.tabs) {
      database.byHand = false;
      while (database.pending > 0) database.next();
    }
    await this.rest(1_000);
  }
  killTab(index: number, answered: boolean) {
    const { database, bench } = this.tab(index);
    if (!answered) database.next(false);
    database.kill();
    this.tabs = this.tabs.filter((tab) => tab.bench !== bench);
  }
  /** The process ends: local storage is as it was some while ago, because browsers write it when it suits them. */
  killAll(ago: number) {
    for (const { database } of this.tabs) database.kill();
    this.tabs = [];
    const kept = this.snapshots[Math.max(0, this.snapshots.length - 1 - ago)];
    this.storage = new MemoryStorage();
    for (const [key, text] of kept ?? []) this.storage.entries.set(key, text);
  }
  async settleConflict(index: number, way: "take the other" | "keep this") {
    await this.finish();
    const { bench } = this.tab(index);
    if (bench.state().notices.some(({ id }) => id === "other-tab"))
      await bench.actions.takeWayOut("other-tab", way);
    await this.finish();
  }
  private descends(turns: number, from: number): boolean {
    for (let each: number | undefined = turns; each !== undefined; each = this.parents.get(each))
      if (each === from) return true;
    return false;
  }
  /** What was called saved and is neither on the board of a new tab, nor before it, nor among the versions. */
  async lost(): Promise<number[]> {
    const { bench } = this.open(false);
    await vi.advanceTimersByTimeAsync(0);
    const shows = [...this.disk.versions.values()].filter(({ kind }) => kind === "show");
    const there = shows.map(({ text }) => (JSON.parse(text) as Show).designs.left.secondary.turns);
    there.push(bench.open().secondary.turns);
    this.tabs.pop();
    return [...this.promised].filter((promise) => !there.some((turns) => this.descends(turns, promise)));
  }
}

type Step = (browser: Browser) => Promise<unknown> | unknown;

const index = fc.nat({ max: 2 });
const steps: fc.Arbitrary<{ name: string; step: Step }> = fc.oneof(
  { weight: 6, arbitrary: index.map((at) => ({ name: `edit ${at}`, step: (b: Browser) => b.edit(at) })) },
  {
    weight: 6,
    arbitrary: fc
      .tuple(index, fc.integer({ min: 1, max: 8 }))
      .map(([at, count]) => ({ name: `commit ${at}×${count}`, step: (b: Browser) => b.commit(at, count) })),
  },
  {
    weight: 4,
    arbitrary: fc
      .integer({ min: 0, max: 150 })
      .map((time) => ({ name: `rest ${time}`, step: (b: Browser) => b.rest(time) })),
  },
  { weight: 2, arbitrary: fc.constant({ name: "open", step: (b: Browser) => b.open() }) },
  {
    weight: 1,
    arbitrary: fc.tuple(index, fc.boolean()).map(([at, answered]) => ({
      name: `kill tab ${at}${answered ? "" : ", its write done"}`,
      step: (b: Browser) => b.killTab(at, answered),
    })),
  },
  {
    weight: 1,
    arbitrary: fc
      .nat({ max: 12 })
      .map((ago) => ({ name: `kill all, ${ago} ago`, step: (b: Browser) => b.killAll(ago) })),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(index, fc.constantFrom("take the other" as const, "keep this" as const))
      .map(([at, way]) => ({ name: `${way} ${at}`, step: (b: Browser) => b.settleConflict(at, way) })),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom("local", "database", "none").map((place) => ({
      name: `full: ${place}`,
      step: (b: Browser) => {
        const full = new DOMException("full", "QuotaExceededError");
        b.storage.fail = place === "local" ? full : null;
        b.disk.fail = place === "database" ? full : null;
      },
    })),
  },
);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("whatever tabs, edits, full places and kills come in whatever order", () => {
  it("loses nothing that was called saved", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(steps, { minLength: 5, maxLength: 40 }), async (plan) => {
        const browser = new Browser();
        for (const { step } of plan) {
          await step(browser);
          await browser.rest(0);
        }
        browser.storage.fail = null;
        browser.disk.fail = null;
        const lost = await browser.lost();
        if (lost.length > 0) throw new Error(`lost ${lost}\n${plan.map(({ name }) => name).join("\n")}`);
      }),
      { numRuns: Number(process.env.RUNS ?? 60), seed: Number(process.env.SEED ?? 9) },
    );
  });
});
