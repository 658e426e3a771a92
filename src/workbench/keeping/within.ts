/** A timeout for promises that a browser may never settle. */

/** Thrown after the timeout. */
export class Unanswered extends Error {
  override name = "Unanswered";
}

/**
 * The value of a promise, if it settles within `timeout` ms.
 * @throws Unanswered after the timeout; otherwise what the promise throws
 */
export function within<Value>(timeout: number, promise: Promise<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Unanswered()), timeout);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
