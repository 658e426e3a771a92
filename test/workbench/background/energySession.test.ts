import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { EnergySweep } from "../../../src/calc/circuit/energySweep";
import { newEnergySweeps } from "../../../src/workbench/background/energySession";
import type { EnergyRequest } from "../../../src/workbench/background/energySweepJob";
import { startEnergySweep } from "../../../src/workbench/background/workers";
import { newBench, newHands } from "../fakes";

const SWEEP: EnergySweep = {
  points: [],
  onTime: 1e-4,
  allowedCurrent: 600,
  mostEnergyTap: 6.5,
  leastBeside: 4,
  beside: 0.06,
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
  const { workers, start, last } = newHands<EnergyRequest>();
  const sweeps = newEnergySweeps(bench.store, start);
  const tell = (sweep: EnergySweep) => last().answer({ result: sweep });
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
    expect(state().sweeping).toBe(true);
    vi.advanceTimersByTime(100);
    expect(posted()).toHaveLength(1);
    expect(posted()[0]).toMatchObject({ onTimes: "all", design: { primary: { pitch: 0.015 } } });
  });

  it("sweeps the own on-time alone where only the tuning aim needs it", () => {
    const { set, pass, posted, sweeps, tell } = newSweeps();
    set("tuningAim", AIM);
    pass();
    expect(posted().map(({ onTimes }) => onTimes)).toEqual(["own"]);
    tell(SWEEP);
    sweeps.watch();
    pass();
    expect(posted().map(({ onTimes }) => onTimes)).toEqual(["own", "all"]);
  });

  it("tells how far it is, then the sweep", () => {
    const { sweeps, pass, tell, state, workers } = newSweeps();
    sweeps.watch();
    pass();
    workers[0].answer({ progress: 0.4 });
    vi.advanceTimersByTime(500);
    expect(sweeps.progress.getState()).toEqual({ shown: true, done: 0.4 });
    expect(state()).toMatchObject({ sweeping: true, swept: false });
    tell(SWEEP);
    expect(state()).toEqual({ sweep: SWEEP, swept: true, stale: false, sweeping: false });
    expect(sweeps.progress.getState().shown).toBe(false);
  });

  it("keeps the old sweep, as stale, and ends the worker when a change overtakes it", () => {
    const { sweeps, pass, tell, state, set, workers } = newSweeps();
    sweeps.watch();
    pass();
    tell(SWEEP);
    set("primary.pitch", 0.015);
    expect(state()).toMatchObject({ sweep: SWEEP, stale: true, sweeping: true });
    pass();
    expect(workers).toHaveLength(1);
    set("primary.pitch", 0.016);
    expect(workers[0].terminated).toBe(true);
    workers[0].answer({ result: { ...SWEEP, mostEnergyTap: 1 } });
    expect(state().sweep).toBe(SWEEP);
    pass();
    expect(workers).toHaveLength(2);
  });

  it("asks for nothing new where only tap, title or repetition rate change", () => {
    const { sweeps, pass, tell, state, set, posted } = newSweeps();
    sweeps.watch();
    pass();
    tell(SWEEP);
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
    expect(state()).toMatchObject({ sweeping: false, swept: false });
    pass();
    expect(posted()).toHaveLength(1);
    sweeps.again();
    expect(posted()).toHaveLength(2);
    tell(SWEEP);
    expect(state()).toMatchObject({ sweep: SWEEP, sweeping: false });
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
    tell(SWEEP);
    bench.actions.openDesign(bench.show().order[1]);
    expect(state()).toMatchObject({ sweep: null, swept: false, sweeping: true });
  });

  it("says so when the worker dies, and goes on with another", () => {
    const { sweeps, pass, state, workers, bench, set, tell } = newSweeps();
    sweeps.watch();
    set("primary.pitch", 0.015, "change pitch");
    pass();
    workers[0].emit("error");
    expect(state().sweeping).toBe(false);
    const [notice] = bench.state().notices;
    expect(notice.sentence).toMatch(/^The sweep of bursts stopped unexpectedly.*“change pitch”/);
    bench.actions.takeWayOut(notice.id, "compute again");
    expect(workers).toHaveLength(2);
    expect(state().sweeping).toBe(true);
    tell(SWEEP);
    expect(state().sweep).toBe(SWEEP);
    expect(bench.state().notices).toEqual([]);
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
    tell(SWEEP);
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
    tell(SWEEP);
    expect(bench.evaluator.requests).toHaveLength(1);
    bench.actions.setValue("tuningAim", AIM);
    expect(bench.evaluator.requests.at(-1)?.mostEnergyTap).toBe(6.5);
  });
});

describe("the sweep's worker", () => {
  it("finds the tap that the session is told", () => {
    const bench = newBench();
    const sweeps = newEnergySweeps(bench.store, startEnergySweep);
    bench.actions.setValue("tuningAim", AIM);
    vi.advanceTimersByTime(300);
    const { sweep, sweeping } = sweeps.store.getState();
    expect(sweeping).toBe(false);
    expect(bench.evaluator.requests.at(-1)?.mostEnergyTap).toBe(sweep?.mostEnergyTap);
    sweeps.close();
  });
});
