import { act, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { useQueuedRender } from "../../src/ui/useQueuedRender";
import { backToRealTimers } from "../realTimers";

function Part({ name }: { name: string }) {
  return useQueuedRender() ? <p>{name}</p> : null;
}

function Parts({ names }: { names: readonly string[] }) {
  return names.map((name) => <Part key={name} name={name} />);
}

const drawn = () => screen.queryAllByText(/part/).map(({ textContent }) => textContent);

beforeEach(() => vi.useFakeTimers());
afterEach(backToRealTimers);

it("draws one part at a time, in their order, and leaves out one that has gone", () => {
  const { rerender } = render(<Parts names={["part 1", "part 2", "part 3"]} />);
  expect(drawn()).toEqual([]);
  act(() => void vi.advanceTimersToNextTimer());
  expect(drawn()).toEqual(["part 1"]);
  rerender(<Parts names={["part 1", "part 3", "part 4"]} />);
  act(() => void vi.advanceTimersToNextTimer());
  expect(drawn()).toEqual(["part 1", "part 3"]);
  act(() => void vi.runAllTimers());
  expect(drawn()).toEqual(["part 1", "part 3", "part 4"]);
});

it("begins again when the line was empty", () => {
  render(<Part name="part 1" />);
  act(() => void vi.runAllTimers());
  render(<Part name="part 2" />);
  act(() => void vi.runAllTimers());
  expect(drawn()).toEqual(["part 1", "part 2"]);
});
