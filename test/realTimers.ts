import { cleanup } from "@testing-library/react";
import { vi } from "vitest";

/** Ends fake timers with nothing left that waits for one: files share what is queued. */
export function backToRealTimers(): void {
  cleanup();
  vi.runOnlyPendingTimers();
  vi.useRealTimers();
}
