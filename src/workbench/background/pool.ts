/** Many computations of one kind, on as many workers as the machine has to spare. */
import { type Batch, type BatchOptions, newBatch, type Run } from "./batch";
import { newRunner, type Runner, type Work } from "./runner";

export interface Pool<Request, Result, Part> {
  /** A user of the pool, whose requests wait behind those of the others. */
  batch(options: BatchOptions): Batch<Request, Result, Part>;
}

interface Item<Request, Result, Part> {
  request: Request;
  index: number;
  run: Run<Result, Part>;
}

interface Slot<Request, Result, Part> {
  runner: Runner<Request, Result, Part>;
  item: Item<Request, Result, Part> | null;
}

/** ms that a job may still take when nobody waits for it any longer */
const GRACE = 3000;

/** Workers that leave one processor to the page; at least one. */
export function spareProcessors(): number {
  return Math.max(1, (navigator.hardwareConcurrency || 1) - 1);
}

/** Makes a pool whose workers start when they are needed. */
export function newPool<Request, Result, Part = never>(
  work: Work,
  size: number,
): Pool<Request, Result, Part> {
  const slots = Array.from(
    { length: size },
    (): Slot<Request, Result, Part> => ({ runner: newRunner<Request, Result, Part>(work), item: null }),
  );
  let queue: Item<Request, Result, Part>[] = [];
  let pumping = false;

  const begin = (slot: Slot<Request, Result, Part>, item: Item<Request, Result, Part>) => {
    const { run, index, request } = item;
    slot.item = item;
    const ended = (tell: () => void) => {
      slot.item = null;
      if (!run.over) tell();
      pump();
    };
    slot.runner.run(request, {
      progress: () => undefined,
      partial: (part) => {
        if (!run.over) run.partial(index, part);
      },
      result: (result) => ended(() => run.result(index, result)),
      failure: (failure) => ended(() => run.failure(index, failure)),
    });
  };
  const freeSlot = () => slots.find(({ item }) => item === null);
  /** A worker that cannot start has failed before `begin` returns: this loop takes the next one, and no call nests. */
  const pump = () => {
    if (pumping) return;
    pumping = true;
    for (let slot = freeSlot(); slot; slot = freeSlot()) {
      const item = queue.shift();
      if (!item) break;
      begin(slot, item);
    }
    pumping = false;
  };
  const endLater = (slot: Slot<Request, Result, Part>) => {
    const dropped = slot.item;
    setTimeout(() => {
      if (slot.item !== dropped) return;
      slot.runner.end();
      slot.item = null;
      pump();
    }, GRACE);
  };
  const add = (requests: readonly Request[], run: Run<Result, Part>) => {
    queue = [...queue, ...requests.map((request, index) => ({ request, index, run }))];
    pump();
  };
  /** What is under way is dropped, and ended only where it does not end by itself: the worker remembers the coil. */
  const drop = (run: Run<Result, Part>) => {
    run.over = true;
    queue = queue.filter((item) => item.run !== run);
    for (const slot of slots) if (slot.item?.run === run) endLater(slot);
  };
  return { batch: (options) => newBatch(options, add, drop) };
}
