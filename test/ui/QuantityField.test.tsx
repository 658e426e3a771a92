// @vitest-environment jsdom
import { act, cleanup, fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { commitDrafts } from "../../src/ui/drafts";
import { QuantityField } from "../../src/ui/QuantityField";
import type { Dimension } from "../../src/units/dimension";
import type { UnitSystem } from "../../src/units/unitSystem";

afterEach(cleanup);

interface Given {
  value?: number | null;
  usual?: number | null;
  dimension?: Dimension;
  system?: UnitSystem;
  nullable?: boolean;
  whole?: boolean;
  refuse?: (value: number) => string | null;
}

let fields = 0;

/** A field that is kept by its surroundings, as in the app. */
function field({
  value = 0.125,
  usual = value,
  dimension = "length",
  system = "metric",
  ...rest
}: Given = {}) {
  const commits = vi.fn();
  const place = `field ${++fields}`;
  function Kept() {
    const [kept, setKept] = useState<number | null>(value);
    return (
      <>
        <QuantityField
          label="Former diameter"
          place={place}
          value={kept}
          usual={usual}
          dimension={dimension}
          system={system}
          onCommit={(next, run) => {
            if (run === undefined) commits(next);
            else commits(next, run);
            setKept(next);
          }}
          {...rest}
        />
        <button type="button" onClick={() => setKept(0.2)}>
          from elsewhere
        </button>
      </>
    );
  }
  render(<Kept />);
  return {
    commits,
    input: screen.getByLabelText<HTMLInputElement>("Former diameter"),
    user: userEvent.setup(),
  };
}

async function retype(user: ReturnType<typeof userEvent.setup>, input: HTMLInputElement, text: string) {
  await user.clear(input);
  await user.type(input, text);
}

describe("a field for a quantity", () => {
  it("shows the number with its unit beside it", () => {
    const { input } = field();
    expect(input.value).toBe("125");
    expect(screen.getByText("mm")).toBeTruthy();
  });

  it("reads a bare number in one unit, whatever stood there before", async () => {
    const { commits, input, user } = field({ value: 120, dimension: "frequency" });
    await retype(user, input, "1500{Enter}");
    expect(commits).toHaveBeenLastCalledWith(1500);
    expect(input.value).toBe("1500");
    await retype(user, input, "120{Enter}");
    expect(commits).toHaveBeenLastCalledWith(120);
  });

  it("changes nothing when it is looked into and left", async () => {
    const { commits, input, user } = field({ value: 1 / 3 });
    await user.click(input);
    expect(input.value).toBe("333.333333333");
    await user.tab();
    expect(commits).not.toHaveBeenCalled();
    expect(input.value).toBe("333.3333");
  });

  it("takes over what was typed at Enter, and on leaving", async () => {
    const { commits, input, user } = field();
    await retype(user, input, "160{Enter}");
    expect(commits).toHaveBeenLastCalledWith(0.16);
    await retype(user, input, "90");
    await user.tab();
    expect(commits).toHaveBeenLastCalledWith(0.09);
    expect(commits).toHaveBeenCalledTimes(2);
  });

  it("reads inches in a millimetre field", async () => {
    const { commits, input, user } = field();
    await retype(user, input, "12.5in{Enter}");
    expect(commits.mock.lastCall?.[0]).toBeCloseTo(0.3175, 12);
    expect(input.value).toBe("317.5");
  });

  it("takes a number without a unit in the unit that stands beside it", async () => {
    const { commits, input, user } = field({ value: 2e-7, dimension: "capacitance" });
    expect(screen.getByText("nF")).toBeTruthy();
    await retype(user, input, "330{Enter}");
    expect(commits.mock.lastCall?.[0]).toBeCloseTo(3.3e-7, 18);
  });

  it("keeps unreadable text with a sentence and changes nothing", async () => {
    const { commits, input, user } = field();
    await retype(user, input, "about 160");
    await user.tab();
    expect(input.value).toBe("about 160");
    expect(input.getAttribute("aria-invalid")).toBe("true");
    expect(screen.getByText(/about 160/)).toBeTruthy();
    expect(commits).not.toHaveBeenCalled();
  });

  it("gives the value back at Escape", async () => {
    const { input, user } = field();
    await retype(user, input, "x{Enter}");
    await user.type(input, "{Escape}");
    expect(input.value).toBe("125");
    expect(input.getAttribute("aria-invalid")).toBe("false");
  });

  it("asks which is meant by one comma before three digits", async () => {
    const { commits, input, user } = field();
    await retype(user, input, "1,250{Enter}");
    expect(commits).not.toHaveBeenCalled();
    await user.click(screen.getByRole("button", { name: "1.250" }));
    expect(commits.mock.lastCall?.[0]).toBeCloseTo(0.00125, 12);
    expect(screen.queryByRole("button", { name: "1250" })).toBeNull();
  });

  it("keeps what has no meaning out of the design and says why", async () => {
    const { commits, input, user } = field({
      refuse: (value) => (value > 0 ? null : "It must be above zero."),
    });
    await retype(user, input, "-3{Enter}");
    expect(commits).not.toHaveBeenCalled();
    expect(input.value).toBe("-3");
    expect(screen.getByText("It must be above zero.")).toBeTruthy();
  });

  it("drops its draft when the value changes from elsewhere", async () => {
    const { input, user } = field();
    await retype(user, input, "x{Enter}");
    await user.click(screen.getByRole("button", { name: "from elsewhere" }));
    expect(input.value).toBe("200");
  });

  it("can be emptied where nothing is a value, and not elsewhere", async () => {
    const optional = field({ nullable: true });
    await optional.user.click(screen.getByRole("button", { name: "Clear Former diameter" }));
    expect(optional.commits).toHaveBeenLastCalledWith(null);
    cleanup();
    const required = field();
    await required.user.clear(required.input);
    await required.user.tab();
    expect(required.commits).not.toHaveBeenCalled();
    expect(required.input.getAttribute("aria-invalid")).toBe("true");
  });

  it("steps with the arrows, tenfold with Shift, by whole numbers where it counts", async () => {
    const { commits, input, user } = field();
    await user.click(input);
    await user.keyboard("{ArrowUp}");
    expect(commits.mock.lastCall?.[0]).toBeCloseTo(0.126, 12);
    await user.keyboard("{Shift>}{ArrowDown}{/Shift}");
    expect(commits.mock.lastCall?.[0]).toBeCloseTo(0.116, 12);
    cleanup();
    const count = field({ value: 6, dimension: "count", whole: true });
    await count.user.click(count.input);
    await count.user.keyboard("{ArrowDown}");
    expect(count.commits.mock.lastCall?.[0]).toBe(5);
  });

  it("heeds no wheel, with the focus or without", async () => {
    const { commits, input, user } = field();
    fireEvent.wheel(input, { deltaY: -100 });
    await user.click(input);
    fireEvent.wheel(input, { deltaY: -100 });
    expect(commits).not.toHaveBeenCalled();
    expect(input.value).toBe("125");
  });

  it("says of steps by arrow that they belong together, and of what is typed that it does not", async () => {
    const { commits, input, user } = field();
    await user.click(input);
    await user.keyboard("{ArrowUp}{ArrowUp}");
    const [first, second] = commits.mock.calls;
    expect(first[1]).toBeTruthy();
    expect(second[1]).toBe(first[1]);
    await retype(user, input, "90{Enter}");
    expect(commits.mock.lastCall).toEqual([0.09]);
  });

  it("holds no draft once what is typed is the value again", async () => {
    const { input, user } = field();
    await user.type(input, "6{Backspace}");
    expect(input.dataset.draft).toBeUndefined();
  });

  it("lets Enter end a composition without taking over what is half composed", async () => {
    const { commits, input, user } = field();
    await user.type(input, "0");
    fireEvent.keyDown(input, { key: "Enter", isComposing: true });
    expect(commits).not.toHaveBeenCalled();
    expect(input.value).toBe("1250");
  });

  it("never makes one number of two lines that are pasted", async () => {
    const { commits, input, user } = field();
    await user.clear(input);
    await user.paste("12\n34\n");
    expect(input.value).toBe("12 34");
    await user.keyboard("{Enter}");
    expect(commits).not.toHaveBeenCalled();
    expect(input.getAttribute("aria-invalid")).toBe("true");
    await user.clear(input);
    await user.paste("160\n");
    await user.keyboard("{Enter}");
    expect(commits).toHaveBeenLastCalledWith(0.16);
  });
});

/** A field of the design that is chosen; both designs hold the same value. */
function FieldOf({ design, onCommit }: { design: string; onCommit: (value: number | null) => void }) {
  return (
    <QuantityField
      label="Former diameter"
      place={`${design}/formerDiameter`}
      value={0.125}
      usual={0.125}
      dimension="length"
      system="metric"
      onCommit={onCommit}
    />
  );
}

describe("what is typed and not taken over", () => {
  const input = () => screen.getByLabelText<HTMLInputElement>("Former diameter");

  it("stays with its design while another one is on the board, and is there when it comes back", async () => {
    const [left, right] = [vi.fn(), vi.fn()];
    const user = userEvent.setup();
    const view = render(<FieldOf design="left" onCommit={left} />);
    await user.type(input(), "0");
    view.rerender(<FieldOf design="right" onCommit={right} />);
    expect(input().value).toBe("125");
    await user.tab();
    act(commitDrafts);
    expect([left, right].map((commit) => commit.mock.calls)).toEqual([[], []]);
    view.rerender(<FieldOf design="left" onCommit={left} />);
    expect(input().value).toBe("1250");
    act(commitDrafts);
    expect(left.mock.calls).toEqual([[1.25, undefined]]);
    expect(right).not.toHaveBeenCalled();
  });

  it("outlives its field, with the sentence about it", async () => {
    const user = userEvent.setup();
    const first = render(<FieldOf design="kept" onCommit={vi.fn()} />);
    await user.type(input(), " about");
    await user.tab();
    first.unmount();
    render(<FieldOf design="kept" onCommit={vi.fn()} />);
    expect(input().value).toBe("125 about");
    expect(input().getAttribute("aria-invalid")).toBe("true");
    await user.type(input(), "{Escape}");
    expect(input().value).toBe("125");
  });
});
