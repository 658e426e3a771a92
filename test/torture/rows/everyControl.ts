/** Every control pressed once, on a phone and in every state that a design can bring the page into. */
import type { Page } from "playwright-core";
import { withValueAt } from "../../../src/design/changeAt";
import { exampleShow, pierHallLeft } from "../../../src/design/examples";
import type { Show } from "../../../src/design/show";
import { keptText } from "../../../src/workbench/keeping/loadedShow";
import { SHOW_KEY } from "../../../src/workbench/keeping/storageKeys";
import { pressEveryControl } from "../../browser/support/everyControl";
import { fileOfNotes } from "../../calc/music/midiFiles";
import type { Lab } from "../lab";
import type { RowResult, TortureRow } from "../row";
import { openBench } from "../support/bench";

interface State {
  name: string;
  /** paths of the left design with other values */
  changes?: Readonly<Record<string, unknown>>;
  phone?: boolean;
  dark?: boolean;
  prepare?: (page: Page) => Promise<void>;
}

const NO_TOP_LOAD = { "topLoad.elements": [], "topLoad.breakoutPoint": null };
const NO_SPARK = { "spark.length": 0, tuningAim: { kind: "unloaded" } };
const BENCH_SUPPLY = { "drive.supply.arrangement": "bench", "drive.supply.mainsVoltage": 60 };
const LEAST = {
  "primary.strikeRail": null,
  "drive.currentTransformer.turns": [40],
  "drive.commutation.mode": "fixed frequency",
  "drive.bridge": "half",
  "room.ceilingHeight": null,
  "room.wallDistance": null,
  "room.audienceDistance": null,
};
/** nothing of it can be solved */
const UNSOLVED = {
  "secondary.turns": 1e-30,
  "secondary.windingLength": 1e30,
  "primary.innerRadius": 1e30,
  "primary.tap": 1e300,
  "tank.unit.capacitance": 1e-300,
};

const MARK = { revision: 1, savedAt: new Date(0), writer: "a test", follows: null };

const NOTE = 480;

async function openScore(page: Page): Promise<void> {
  const part = (key: number) =>
    Array.from({ length: 8 }, (_, step) => ({
      start: step * NOTE,
      length: NOTE,
      key: key + step,
      velocity: 100,
    }));
  const buffer = Buffer.from(fileOfNotes([part(72), part(43)]));
  await page.getByRole("tab", { name: "Score" }).click();
  await page
    .getByLabel("Open a Standard MIDI File")
    .setInputFiles({ name: "duet.mid", mimeType: "audio/midi", buffer });
  await page.getByRole("img", { name: "Piano roll of the Right coil" }).waitFor();
}

const STATES: readonly State[] = [
  { name: "on a phone", phone: true },
  { name: "on a phone, dark", phone: true, dark: true },
  { name: "dark", dark: true },
  { name: "without a top load", changes: NO_TOP_LOAD },
  { name: "without a top load, on a phone", changes: NO_TOP_LOAD, phone: true },
  { name: "without a spark", changes: NO_SPARK },
  { name: "on a bench supply", changes: BENCH_SUPPLY },
  { name: "with nothing optional", changes: LEAST },
  { name: "with nothing solved", changes: UNSOLVED },
  { name: "with nothing solved, on a phone", changes: UNSOLVED, phone: true },
  { name: "with a score", prepare: openScore },
  { name: "with a score, on a phone", prepare: openScore, phone: true },
];

function showWith(changes: Readonly<Record<string, unknown>>): Show {
  const left = Object.entries(changes).reduce(
    (design, [path, value]) => withValueAt(design, path, value),
    pierHallLeft,
  );
  const show = exampleShow();
  return { ...show, designs: { ...show.designs, left } };
}

/** The page of a state, walked over; what went wrong, and how much was pressed. */
async function walkOver(
  state: State,
  most: number,
  lab: Lab,
): Promise<{ pressed: number; troubles: string[] }> {
  const context = await lab.newContext();
  try {
    const text = state.changes && keptText(showWith(state.changes), MARK);
    const { page, faults } = await openBench(context, lab.address, async (fresh) => {
      await fresh.emulateMedia({ colorScheme: state.dark ? "dark" : "light" });
      if (state.phone) await fresh.setViewportSize({ width: 390, height: 844 });
      const keep = ([key, kept]: [string, string]) =>
        localStorage.getItem(key) ?? localStorage.setItem(key, kept);
      if (text) await fresh.addInitScript(keep, [SHOW_KEY, text] as [string, string]);
    });
    await state.prepare?.(page);
    const { pressed, troubles } = await pressEveryControl(page, most);
    return { pressed, troubles: troubles.length > 0 ? troubles : faults };
  } catch (error) {
    return { pressed: 0, troubles: [`the walk ended: ${error}`] };
  } finally {
    await context.close();
  }
}

async function run(tries: number, _seed: number, lab: Lab): Promise<RowResult> {
  const losses: string[] = [];
  let tried = 0;
  let states = 0;
  for (const state of STATES) {
    if (tried >= tries) break;
    const { pressed, troubles } = await walkOver(state, tries - tried, lab);
    tried += pressed;
    states += 1;
    losses.push(...troubles.map((trouble) => `${state.name}: ${trouble}`));
  }
  return { tried, lost: losses.length, worst: `${states} states`, losses };
}

export const everyControl: TortureRow = { name: "every control pressed", full: 12_000, short: 0, run };
