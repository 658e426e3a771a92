/** npm run bench: what an evaluation costs, in plain Node, warm. No test depends on these figures. */
import { noteLimits } from "../../src/calc/music/noteLimits";
import { pierHallLeft } from "../../src/design/examples";
import { evaluate, evaluateField } from "../../src/evaluation/evaluate";
import { coilLoad } from "../../src/evaluation/score/coilLoadStage";
import { scoreJob } from "../../src/workbench/background/scoreJob";
import { anyDesignsCost } from "./anyDesignsCost";
import { burstBenches } from "./bursts";
import { type Bench, type Measured, measure, seeded, table } from "./harness";
import { tenMinutes } from "./tenMinutes";

const random = seeded(1);
const example = pierHallLeft;

/** A little change each time, so that no stage finds its answer in its memory. */
function everythingChanged(): typeof example {
  const { secondary, primary, topLoad } = example;
  const stretched = 1 + 1e-3 * random();
  return {
    ...example,
    secondary: { ...secondary, windingLength: secondary.windingLength * stretched },
    primary: { ...primary, innerRadius: primary.innerRadius * stretched },
    topLoad: { ...topLoad, elements: topLoad.elements.map((element) => ({ ...element })) },
  };
}

function tapChanged(): typeof example {
  const tap = example.primary.tap + 0.5 * (random() - 0.5);
  return { ...example, primary: { ...example.primary, tap } };
}

/** Nothing that is remembered fits a longest on-time that was never asked for. */
function onTimeChanged(design: typeof example): typeof example {
  const longestOnTime = design.interrupter.longestOnTime * (1 + 1e-3 * random());
  return { ...design, interrupter: { ...design.interrupter, longestOnTime } };
}

function tenMinutesAnew(): typeof tenMinutes {
  const { left, right } = tenMinutes.designs;
  return {
    ...tenMinutes,
    designs: { left: left && onTimeChanged(left), right: right && onTimeChanged(right) },
  };
}

const BENCHES: Bench[] = [
  {
    name: "the full field model, nothing remembered: what an edit shows within the frame",
    goal: 12,
    run: () => evaluateField(everythingChanged()),
  },
  { name: "the field model, tap alone changed", goal: 3, run: () => evaluateField(tapChanged()) },
  {
    name: "full evaluation, response curves and both bursts with it, nothing remembered",
    goal: 16,
    run: () => evaluate(everythingChanged()),
  },
  { name: "the full evaluation, tap alone changed", goal: null, run: () => evaluate(tapChanged()) },
  {
    name: "what a coil's bursts cost, and the limits of its notes",
    goal: 150,
    run: () => noteLimits(example.interrupter, coilLoad(onTimeChanged(example))),
  },
  {
    name: "ten minutes of three voices for a pair: costs, schedules and all time lines",
    goal: 500,
    run: () => scoreJob(tenMinutesAnew(), { progress: () => undefined }),
  },
];

const measured: Measured[] = [];
for (const bench of [...BENCHES, ...(await burstBenches())]) measured.push(await measure(bench));
console.log(table(measured));
console.log(anyDesignsCost());
