/** Waiting with an end, for what a browser may never answer. */

/** What is thrown where an answer did not come in time. */
export class Unanswered extends Error {
  override name = "Unanswered";
}

/**
 * The answer of a promise, if it comes within `patience` ms.
 * @throws Unanswered where it does not; what the promise throws otherwise
 */
export function within<Value>(patience: number, promise: Promise<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Unanswered()), patience);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
