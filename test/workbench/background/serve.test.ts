import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Job } from "../../../src/workbench/background/protocol";
import { serve } from "../../../src/workbench/background/serve";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

/** A worker's own side: what it posts, and the way to give it an order. */
function newCounter<Result, Part>(
  job: Job<number, Result, Part>,
  transfer?: (result: Result) => Transferable[],
) {
  const posted: unknown[] = [];
  const handedOver: unknown[] = [];
  let order: (event: MessageEvent) => void = () => undefined;
  serve(job, transfer, {
    addEventListener: (_, listener) => {
      order = listener;
    },
    postMessage: (message, options) => {
      posted.push(message);
      handedOver.push(...(options?.transfer ?? []));
    },
  });
  return { posted, handedOver, order: (data: unknown) => order({ data } as MessageEvent) };
}

describe("the worker's side", () => {
  it("answers each order under its id", () => {
    const { posted, order } = newCounter((request) => 2 * request);
    order({ id: 4, request: 21 });
    expect(posted).toEqual([{ id: 4, result: 42 }]);
  });

  it("tells parts before the result", () => {
    const { posted, order } = newCounter<string, number>((request, { partial }) => {
      partial(request);
      return "whole";
    });
    order({ id: 1, request: 5 });
    expect(posted).toEqual([
      { id: 1, partial: 5 },
      { id: 1, result: "whole" },
    ]);
  });

  it("tells progress ten times a second at most", () => {
    const { posted, order } = newCounter<null, never>((steps, { progress }) => {
      for (let step = 0; step < steps; step++) {
        vi.advanceTimersByTime(1);
        progress(step / steps);
      }
      return null;
    });
    order({ id: 1, request: 2000 });
    expect(posted.length).toBeGreaterThan(15);
    expect(posted.length).toBeLessThanOrEqual(21);
  });

  it("says that it failed, and not in the engine's words", () => {
    const { posted, order } = newCounter(() => {
      throw new TypeError("Cannot read properties of undefined");
    });
    order({ id: 9, request: 0 });
    expect(posted).toEqual([{ id: 9, failure: true }]);
  });

  it("hands over what is large instead of copying it", () => {
    const { handedOver, order } = newCounter(
      () => new Uint8Array(8),
      (bytes) => [bytes.buffer],
    );
    order({ id: 1, request: 0 });
    expect(handedOver).toHaveLength(1);
  });
});
