import { tenTimesASecond } from "./pace";
import type { Job, Order, Reply } from "./protocol";

/** The part of the worker's global scope that is used here. */
interface WorkerScope {
  addEventListener(type: "message", listener: (event: MessageEvent) => void): void;
  postMessage(message: unknown, options?: { transfer: Transferable[] }): void;
}

/**
 * Makes a worker of a job: each order is answered with progress and parts, then with the result or a failure.
 * @param transfer the parts of a result to transfer instead of copying them
 */
export function serve<Request, Result, Part = never>(
  job: Job<Request, Result, Part>,
  transfer: (result: Result) => Transferable[] = () => [],
  scope: WorkerScope = self,
): void {
  const post = (reply: Reply<Result, Part>, transferables: Transferable[] = []) =>
    scope.postMessage(reply, { transfer: transferables });
  scope.addEventListener("message", ({ data }: MessageEvent<Order<Request>>) => {
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
