/** Many computations of one kind, on as many workers as there are spare processors. */
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

/** ms that a cancelled job may still take */
const GRACE = 3000;

/** Number of workers that leaves one processor to the page; at least one. */
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
  /** A worker that cannot start fails before `begin` returns; the loop then takes the next one without recursion. */
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
  /** A running job is dropped, but its worker is ended only if the job does not finish soon: it has the coil cached. */
  const drop = (run: Run<Result, Part>) => {
    run.over = true;
    queue = queue.filter((item) => item.run !== run);
    for (const slot of slots) if (slot.item?.run === run) endLater(slot);
  };
  return { batch: (options) => newBatch(options, add, drop) };
}
