import { tenTimesASecond } from "./pace";
import type { Job, Order, Reply } from "./protocol";

/** The worker's own side, as far as it is used here. */
interface Counter {
  addEventListener(type: "message", listener: (event: MessageEvent) => void): void;
  postMessage(message: unknown, options?: { transfer: Transferable[] }): void;
}

/**
 * Makes a worker of a job: each order is answered by progress and parts, then by the result or by a failure.
 * @param transfer what of a result is handed over instead of being copied
 */
export function serve<Request, Result, Part = never>(
  job: Job<Request, Result, Part>,
  transfer: (result: Result) => Transferable[] = () => [],
  counter: Counter = self,
): void {
  const post = (reply: Reply<Result, Part>, handedOver: Transferable[] = []) =>
    counter.postMessage(reply, { transfer: handedOver });
  counter.addEventListener("message", ({ data }: MessageEvent<Order<Request>>) => {
    const { id, request } = data;
    const mayTell = tenTimesASecond();
    const progress = (done: number) => {
      if (mayTell()) post({ id, progress: done });
    };
    try {
      const result = job(request, { progress, partial: (partial) => post({ id, partial }) });
      post({ id, result }, transfer(result));
    } catch {
      post({ id, failure: true });
    }
  });
}
