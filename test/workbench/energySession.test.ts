import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { EnergySweep } from "../../src/evaluation/energySweep";
import { newEnergySweeps } from "../../src/workbench/energySession";
import { type EnergyReply, type EnergyRequest, sweepBursts } from "../../src/workbench/energySweeping";
import { HandWorker, newBench } from "./fakes";

const SWEEP: EnergySweep = {
  points: [],
  onTime: 1e-4,
  allowedCurrent: 600,
  mostEnergyTap: 6.5,
  leastBeside: 4,
};
const AIM = { kind: "most energy" };

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

function newSweeps() {
  const bench = newBench();
  const workers: HandWorker<EnergyRequest>[] = [];
  const sweeps = newEnergySweeps(bench.store, () => {
    const worker = new HandWorker<EnergyRequest>();
    workers.push(worker);
    return worker;
  });
  const tell = (reply: EnergyReply) => workers.at(-1)?.emit("message", reply);
  return {
    bench,
    workers,
    sweeps,
    tell,
    state: sweeps.store.getState,
    posted: () => workers.flatMap(({ posted }) => posted),
    set: bench.actions.setValue,
    pass: () => vi.advanceTimersByTime(300),
  };
}

describe("the sweep of bursts in a session", () => {
  it("does nothing while nobody needs it", () => {
    const { set, pass, posted } = newSweeps();
    set("primary.pitch", 0.015);
    pass();
    expect(posted()).toEqual([]);
  });

  it("begins a while after the last change, with the design as it then is", () => {
    const { sweeps, set, posted, state } = newSweeps();
    sweeps.watch();
    vi.advanceTimersByTime(200);
    set("primary.pitch", 0.015);
    vi.advanceTimersByTime(200);
    expect(posted()).toEqual([]);
    expect(state().progress).toBe(0);
    vi.advanceTimersByTime(100);
    expect(posted()).toHaveLength(1);
    expect(posted()[0]).toMatchObject({ onTimes: "all", design: { primary: { pitch: 0.015 } } });
  });

  it("sweeps the own on-time alone where only the tuning aim needs it", () => {
    const { set, pass, posted, sweeps, tell } = newSweeps();
    set("tuningAim", AIM);
    pass();
    expect(posted().map(({ onTimes }) => onTimes)).toEqual(["own"]);
    tell({ sweep: SWEEP });
    sweeps.watch();
    pass();
    expect(posted().map(({ onTimes }) => onTimes)).toEqual(["own", "all"]);
  });

  it("tells how far it is, then the sweep", () => {
    const { sweeps, pass, tell, state } = newSweeps();
    sweeps.watch();
    pass();
    tell({ progress: 0.4 });
    expect(state()).toMatchObject({ progress: 0.4, swept: false });
    tell({ sweep: SWEEP });
    expect(state()).toEqual({ sweep: SWEEP, swept: true, stale: false, progress: null, message: "" });
  });

  it("keeps the old sweep, as stale, and ends the worker when a change overtakes it", () => {
    const { sweeps, pass, tell, state, set, workers } = newSweeps();
    sweeps.watch();
    pass();
    tell({ sweep: SWEEP });
    set("primary.pitch", 0.015);
    expect(state()).toMatchObject({ sweep: SWEEP, stale: true, progress: 0 });
    pass();
    expect(workers).toHaveLength(1);
    set("primary.pitch", 0.016);
    expect(workers[0].terminated).toBe(true);
    workers[0].emit("message", { sweep: { ...SWEEP, mostEnergyTap: 1 } });
    expect(state().sweep).toBe(SWEEP);
    pass();
    expect(workers).toHaveLength(2);
  });

  it("asks for nothing new where only tap, title or repetition rate change", () => {
    const { sweeps, pass, tell, state, set, posted } = newSweeps();
    sweeps.watch();
    pass();
    tell({ sweep: SWEEP });
    set("primary.tap", 5);
    set("title", "Another");
    set("interrupter.repetitionRate", 60);
    pass();
    expect(posted()).toHaveLength(1);
    expect(state().stale).toBe(false);
  });

  it("is given up at once, and taken up again when asked", () => {
    const { sweeps, pass, tell, state, workers, posted } = newSweeps();
    sweeps.watch();
    pass();
    sweeps.cancel();
    expect(workers[0].terminated).toBe(true);
    expect(state()).toMatchObject({ progress: null, swept: false });
    pass();
    expect(posted()).toHaveLength(1);
    sweeps.again();
    expect(posted()).toHaveLength(2);
    tell({ sweep: SWEEP });
    expect(state()).toMatchObject({ sweep: SWEEP, progress: null });
  });

  it("is given up before it has begun", () => {
    const { sweeps, pass, posted } = newSweeps();
    sweeps.watch();
    sweeps.cancel();
    pass();
    expect(posted()).toEqual([]);
  });

  it("stops when nobody looks any longer, and begins again for the next", () => {
    const { sweeps, pass, workers, posted } = newSweeps();
    const leave = sweeps.watch();
    pass();
    leave();
    expect(workers[0].terminated).toBe(true);
    sweeps.watch();
    pass();
    expect(posted()).toHaveLength(2);
  });

  it("does for the aim what was given up on the chart once the chart is left", () => {
    const { sweeps, set, pass, posted } = newSweeps();
    set("tuningAim", AIM);
    const leave = sweeps.watch();
    pass();
    sweeps.cancel();
    leave();
    pass();
    expect(posted().map(({ onTimes }) => onTimes)).toEqual(["all", "own"]);
  });

  it("forgets the sweep of a design that is no longer on the board", () => {
    const { sweeps, pass, tell, state, bench } = newSweeps();
    sweeps.watch();
    pass();
    tell({ sweep: SWEEP });
    bench.actions.openDesign(bench.show().order[1]);
    expect(state()).toMatchObject({ sweep: null, swept: false, progress: 0 });
  });

  it("says so when the worker dies, and goes on with another", () => {
    const { sweeps, pass, state, workers } = newSweeps();
    sweeps.watch();
    pass();
    workers[0].emit("error");
    expect(state().message).toMatch(/compute it again/);
    sweeps.again();
    expect(workers).toHaveLength(2);
    expect(state().message).toBe("");
  });

  it("stops for good when it is closed", () => {
    const { sweeps, pass, posted } = newSweeps();
    sweeps.watch();
    sweeps.close();
    pass();
    expect(posted()).toEqual([]);
  });
});

describe("the tap with most energy", () => {
  it("goes with the next request to the evaluator, and with those in which only the tap moves", () => {
    const { set, pass, tell, bench } = newSweeps();
    const { requests } = bench.evaluator;
    set("tuningAim", AIM);
    expect(requests.at(-1)?.mostEnergyTap).toBeNull();
    pass();
    tell({ sweep: SWEEP });
    expect(requests.at(-1)).toMatchObject({ revision: 3, mostEnergyTap: 6.5 });
    set("primary.tap", 5);
    expect(requests.at(-1)).toMatchObject({ revision: 4, mostEnergyTap: 6.5 });
    set("primary.pitch", 0.015);
    expect(requests.at(-1)?.mostEnergyTap).toBeNull();
    set("primary.pitch", 0.0145);
    expect(requests.at(-1)?.mostEnergyTap).toBe(6.5);
  });

  it("asks for no evaluation where the aim is another one", () => {
    const { sweeps, pass, tell, bench } = newSweeps();
    sweeps.watch();
    pass();
    tell({ sweep: SWEEP });
    expect(bench.evaluator.requests).toHaveLength(1);
    bench.actions.setValue("tuningAim", AIM);
    expect(bench.evaluator.requests.at(-1)?.mostEnergyTap).toBe(6.5);
  });
});

describe("sweeping in place", () => {
  it("gives the tap where there are no workers", () => {
    const bench = newBench();
    const sweeps = newEnergySweeps(bench.store, null);
    bench.actions.setValue("tuningAim", AIM);
    vi.advanceTimersByTime(300);
    const { sweep, progress } = sweeps.store.getState();
    expect(progress).toBeNull();
    expect(bench.evaluator.requests.at(-1)?.mostEnergyTap).toBe(sweep?.mostEnergyTap);
    sweeps.close();
  });

  it("turns what is thrown into a sentence", () => {
    const replies: EnergyReply[] = [];
    const design = { ...newBench().open(), secondary: undefined } as unknown as EnergyRequest["design"];
    sweepBursts({ design, onTimes: "own" }, (reply) => replies.push(reply));
    expect(replies).toEqual([{ failure: expect.stringMatching(/could not be swept/) }]);
  });
});
