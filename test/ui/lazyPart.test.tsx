import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { lazyPart } from "../../src/ui/lazyPart";

const Score = () => <p>the notes</p>;

beforeEach(() => {
  vi.spyOn(console, "error").mockImplementation(() => undefined);
});

afterEach(() => vi.restoreAllMocks());

/** A part that fails to load some times before it comes. */
function partAfter(failures: number) {
  const load = vi.fn(async () => {
    if (load.mock.calls.length <= failures) throw new TypeError("Failed to fetch");
    return { Score };
  });
  return { load, Part: lazyPart(load, "Score", "score") };
}

const retry = () => act(async () => fireEvent.click(screen.getByRole("button", { name: "Retry" })));

describe("a part that is fetched when it is shown", () => {
  it("says what is being fetched, then shows it", async () => {
    const { Part } = partAfter(0);
    await act(async () => render(<Part />));
    expect(screen.getByText("the notes")).toBeVisible();
  });

  it("is fetched once for all its places", async () => {
    const { Part, load } = partAfter(0);
    await act(async () =>
      render(
        <>
          <Part />
          <Part />
        </>,
      ),
    );
    expect(screen.getAllByText("the notes")).toHaveLength(2);
    expect(load).toHaveBeenCalledTimes(1);
  });

  it("reports a failed load, offers to reload the page, and loads again on retry", async () => {
    const { Part, load } = partAfter(1);
    await act(async () => render(<Part />));
    expect(screen.getByRole("alert")).toHaveTextContent("The score could not be loaded.");
    expect(screen.getByRole("button", { name: "Reload page" })).toBeVisible();
    await retry();
    expect(load).toHaveBeenCalledTimes(2);
    expect(screen.getByText("the notes")).toBeVisible();
  });

  it("is fetched by itself once the network is back", async () => {
    const { Part } = partAfter(1);
    await act(async () => render(<Part />));
    await act(async () => void window.dispatchEvent(new Event("online")));
    expect(screen.getByText("the notes")).toBeVisible();
  });

  it("goes on saying so while it does not come", async () => {
    const { Part } = partAfter(9);
    await act(async () => render(<Part />));
    await retry();
    await retry();
    expect(screen.getByRole("alert")).toHaveTextContent("The score could not be loaded.");
  });
});
