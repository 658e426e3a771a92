/** What page and workers say to each other. */

/** What a job may tell while it computes. */
export interface Tell<Part> {
  /** @param done 0 … 1 */
  progress(done: number): void;
  /** a part of the result that is there already */
  partial(part: Part): void;
}

/** What is computed: pure, so that it gives the same wherever it runs. */
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

/** Whether a message has the shape of a reply; what is none comes from a worker that is out of order. */
export function isReply<Result, Part>(message: unknown): message is Reply<Result, Part> {
  if (typeof message !== "object" || message === null || !("id" in message)) return false;
  return typeof message.id === "number" && KINDS.some((kind) => kind in message);
}
