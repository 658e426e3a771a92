import { vi } from "vitest";
import type { Design } from "../../src/design/design";
import type { DriveEvaluation, FieldEvaluation } from "../../src/evaluation/evaluation";
import type { EvaluationRequest } from "../../src/workbench/background/evaluationJob";
import type { Evaluator, EvaluatorReply } from "../../src/workbench/background/evaluator";
import type { Order } from "../../src/workbench/background/protocol";
import type { WorkerLike } from "../../src/workbench/background/runner";
import type { Trouble } from "../../src/workbench/background/trouble";
import type { FoundAtStart } from "../../src/workbench/keeping/findAtStart";
import { createWorkbench } from "../../src/workbench/session/store";
import { Disk, FakeDatabase } from "./fakeDatabase";

/** A storage in memory; `fail` is thrown by the next writes while it is set. */
export class MemoryStorage implements Storage {
  readonly entries = new Map<string, string>();
  fail: unknown = null;
  writes = 0;
  get length() {
    return this.entries.size;
  }
  clear() {
    this.entries.clear();
  }
  getItem(key: string) {
    return this.entries.get(key) ?? null;
  }
  key(index: number) {
    return [...this.entries.keys()][index] ?? null;
  }
  removeItem(key: string) {
    this.entries.delete(key);
  }
  setItem(key: string, value: string) {
    if (this.fail) throw this.fail;
    this.writes += 1;
    this.entries.set(key, value);
  }
}

/** An evaluator that notes what is asked and answers when the test says so. */
export class HandEvaluator implements Evaluator {
  readonly requests: (EvaluationRequest & { revision: number })[] = [];
  private listeners = new Set<(reply: EvaluatorReply) => void>();
  request(revision: number, design: Design, mostEnergyTap?: number | null) {
    this.requests.push({ revision, design, mostEnergyTap });
  }
  listen(listener: (reply: EvaluatorReply) => void) {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
  tell(reply: EvaluatorReply) {
    for (const listener of this.listeners) listener(reply);
  }
  close() {
    this.listeners.clear();
  }
}

/** A worker that notes what is posted and does what the test says. */
export class HandWorker<Request> implements WorkerLike {
  readonly orders: Order<Request>[] = [];
  terminated = false;
  private handlers: Record<string, ((event: unknown) => void)[]> = {};
  get posted(): Request[] {
    return this.orders.map(({ request }) => request);
  }
  postMessage(message: unknown) {
    this.orders.push(message as Order<Request>);
  }
  addEventListener(type: string, handler: unknown) {
    this.handlers[type] = [...(this.handlers[type] ?? []), handler as (event: unknown) => void];
  }
  emit(type: string, data?: unknown) {
    for (const handler of this.handlers[type] ?? []) handler({ data });
  }
  /** Answers the newest order. */
  answer(reply: { progress: number } | { partial: unknown } | { result: unknown } | { failure: true }) {
    this.emit("message", { id: this.orders[this.orders.length - 1].id, ...reply });
  }
  terminate() {
    this.terminated = true;
  }
}

/** What starts hand workers, and those that were started. */
export function newHands<Request>() {
  const workers: HandWorker<Request>[] = [];
  const start = () => {
    const worker = new HandWorker<Request>();
    workers.push(worker);
    return worker;
  };
  return { workers, start, last: () => workers[workers.length - 1] };
}

/** Trouble as an evaluator tells it. */
export function troubleOf(parts: Partial<Trouble> = {}): Trouble {
  return {
    what: "the evaluation of the design",
    failure: "threw",
    lastEdit: null,
    stopped: false,
    again: () => undefined,
    resume: () => undefined,
    ...parts,
  };
}

/** A field reply whose tank's capacitance tells which one it is. */
export function fieldWith(capacitance: number): FieldEvaluation {
  const tank = { capacitance, peakVoltageRating: 1, units: 1, characteristicImpedance: 1 };
  return { secondary: null, topLoad: null, primary: null, coupling: null, tank, tuning: null, losses: null };
}

export const EMPTY_DRIVE: DriveEvaluation = {
  response: null,
  burst: null,
  tank: null,
  drive: null,
  corrections: null,
  findings: [],
};

const disks = new WeakMap<object, Disk>();

/** The disk behind a storage: tabs over the same storage share it. */
function diskOf(storage: MemoryStorage | null): Disk {
  const key = storage ?? {};
  const disk = disks.get(key) ?? new Disk();
  disks.set(key, disk);
  return disk;
}

let ids = 0;

/**
 * A session for a test: over a storage and with a clock of its own unless others are given, and with a
 * database on the disk that belongs to the storage unless it is told what was found at the start.
 */
export function newBench(
  storage: MemoryStorage | null = new MemoryStorage(),
  now = () => new Date(),
  found: FoundAtStart = new FakeDatabase(diskOf(storage)).found(),
) {
  const evaluator = new HandEvaluator();
  const newId = () => `new-${++ids}`;
  const persist = vi.fn<() => void>();
  const quota = async () => null;
  const bench = createWorkbench({ evaluator, storage, found, quota, persist, now, newId });
  const show = () => bench.store.getState().history.present;
  return {
    ...bench,
    evaluator,
    storage,
    disk: diskOf(storage),
    database: found.database as FakeDatabase,
    persist,
    show,
    state: bench.store.getState,
    open: () => show().designs[show().open],
  };
}
