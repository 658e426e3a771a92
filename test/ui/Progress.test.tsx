import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createStore } from "zustand/vanilla";
import { FollowedProgress } from "../../src/ui/FollowedProgress";
import { Progress } from "../../src/ui/Progress";
import { backToRealTimers } from "../realTimers";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(backToRealTimers);

const nothing = () => undefined;

describe("progress", () => {
  it("appears after half a second", () => {
    render(<Progress label="Sweep of bursts" value={0.1} onCancel={nothing} />);
    act(() => vi.advanceTimersByTime(499));
    expect(screen.queryByRole("progressbar")).toBeNull();
    act(() => vi.advanceTimersByTime(1));
    expect(screen.getByRole("progressbar", { name: "Sweep of bursts under way" })).toBeInTheDocument();
  });

  it("says how far it is, in whole percent that never run ahead", () => {
    render(<Progress label="Sweep" value={0.999} onCancel={nothing} after={0} />);
    expect(screen.getByRole("progressbar")).toHaveAttribute("value", "0.999");
    expect(screen.getByText("99 %")).toBeInTheDocument();
  });

  it("has no value where none is known", () => {
    render(<Progress label="Reading" value={null} onCancel={nothing} after={0} />);
    expect(screen.getByRole("progressbar")).not.toHaveAttribute("value");
    expect(screen.queryByText(/%/)).toBeNull();
  });

  it("is given up by its button, which says what it gives up", () => {
    const cancel = vi.fn();
    render(<Progress label="Reading" value={null} onCancel={cancel} after={0} />);
    fireEvent.click(screen.getByRole("button", { name: "Cancel: Reading" }));
    expect(cancel).toHaveBeenCalledOnce();
  });

  it("follows a store, and is there only while that says so", () => {
    const store = createStore<{ shown: boolean; done: number | null }>(() => ({ shown: false, done: null }));
    render(<FollowedProgress store={store} label="Reading" onCancel={nothing} />);
    expect(screen.queryByRole("progressbar")).toBeNull();
    act(() => store.setState({ shown: true, done: 0.5 }));
    expect(screen.getByText("50 %")).toBeInTheDocument();
    act(() => store.setState({ shown: false }));
    expect(screen.queryByRole("progressbar")).toBeNull();
  });
});
