/** The messages between page and workers. */

/** What a job may report while it computes. */
export interface Tell<Part> {
  /** @param done 0 … 1 */
  progress(done: number): void;
  /** a part of the result that is already available */
  partial(part: Part): void;
}

/** A computation; it is pure, so that it gives the same result wherever it runs. */
export type Job<Request, Result, Part = never> = (request: Request, tell: Tell<Part>) => Result;

/** One message to a worker. */
export interface Order<Request> {
  id: number;
  request: Request;
}

/** One message from a worker, about the order of that id. */
export type Reply<Result, Part> =
  | { id: number; progress: number }
  | { id: number; partial: Part }
  | { id: number; result: Result }
  | { id: number; failure: true };

const KINDS = ["progress", "partial", "result", "failure"];

/** Whether a message has the shape of a reply; any other message comes from a faulty worker. */
export function isReply<Result, Part>(message: unknown): message is Reply<Result, Part> {
  if (typeof message !== "object" || message === null || !("id" in message)) return false;
  return typeof message.id === "number" && KINDS.some((kind) => kind in message);
}
