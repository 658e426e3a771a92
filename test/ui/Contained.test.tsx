import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { Contained } from "../../src/ui/Contained";
import { ContainmentContext } from "../../src/ui/containment";
import { Popover } from "../../src/ui/Popover";
import { Tabs } from "../../src/ui/Tabs";

let fails = true;
let tellChange: () => void = () => undefined;

function Fragile() {
  if (fails) throw new Error("a figure is not where it was");
  return <p>the chart</p>;
}

const containment = {
  account: () => "Coilwright 1.2.3 with the design of a coil",
  onChange(tryAgain: () => void) {
    tellChange = tryAgain;
    return () => {
      tellChange = () => undefined;
    };
  },
};

function show() {
  render(
    <ContainmentContext value={containment}>
      <Contained what="burst chart">
        <Fragile />
      </Contained>
      <p>the rest</p>
    </ContainmentContext>,
  );
}

beforeEach(() => {
  fails = true;
  // React tells of every failure, contained or not
  vi.spyOn(console, "error").mockImplementation(() => undefined);
});

afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe("a part of the screen that fails", () => {
  it("says in its own place what it is, shows no raw message, and leaves the rest", () => {
    show();
    expect(screen.getByRole("alert")).toHaveTextContent("The burst chart could not be shown.");
    expect(screen.getByText("the rest")).toBeVisible();
    expect(document.body).not.toHaveTextContent("a figure is not where it was");
  });

  it("is shown again at a press, once it can be", () => {
    show();
    fireEvent.click(screen.getByRole("button", { name: "Retry" }));
    expect(screen.getByRole("alert")).toBeVisible();
    fails = false;
    fireEvent.click(screen.getByRole("button", { name: "Retry" }));
    expect(screen.getByText("the chart")).toBeVisible();
    expect(screen.queryByRole("alert")).toBeNull();
  });

  it("is tried again when the design has changed and stands still, so that undo brings it back", () => {
    vi.useFakeTimers();
    show();
    fails = false;
    act(() => tellChange());
    expect(screen.getByRole("alert")).toBeVisible();
    act(() => vi.advanceTimersByTime(1000));
    expect(screen.getByText("the chart")).toBeVisible();
  });

  it("gives a report with what failed, the reason, the version and the design", async () => {
    const writeText = vi.fn(async (_: string) => undefined);
    vi.stubGlobal("navigator", { clipboard: { writeText } });
    show();
    await act(async () => fireEvent.click(screen.getByRole("button", { name: "Copy report" })));
    expect(screen.getByRole("button", { name: "Report copied" })).toBeVisible();
    const report = writeText.mock.calls[0][0];
    for (const part of [
      "The burst chart could not be shown.",
      "a figure is not where it was",
      "1.2.3",
      "design",
    ])
      expect(report).toContain(part);
  });

  it("shows the report for copying by hand where the clipboard is refused", async () => {
    vi.stubGlobal("navigator", {});
    show();
    expect(screen.queryByRole("textbox")).toBeNull();
    await act(async () => fireEvent.click(screen.getByRole("button", { name: "Copy report" })));
    expect(screen.getByText(/copy the report by hand/)).toBeVisible();
    const report = screen.getByRole<HTMLTextAreaElement>("textbox", { name: "Report" });
    expect(report.value).toContain("a figure is not where it was");
  });
});

describe("the shared parts", () => {
  it("keep a popover's failure to the popover", () => {
    render(
      <Popover title="Peak current" mark="480 A" role="dialog">
        {() => {
          throw new Error("no such input");
        }}
      </Popover>,
    );
    expect(screen.getByRole("button", { name: "480 A" })).toBeVisible();
    expect(screen.getByText("The explanation “Peak current” could not be shown.")).toBeInTheDocument();
  });

  it("keep a view's failure to the view", () => {
    const tabs = [
      { id: "burst", label: "Burst", content: <Fragile /> },
      { id: "score", label: "Score", content: <p>notes</p> },
    ];
    const { rerender } = render(
      <Tabs name="Results" tabs={tabs} chosen="burst" onChoose={() => undefined} />,
    );
    expect(screen.getByText("The view “Burst” could not be shown.")).toBeVisible();
    rerender(<Tabs name="Results" tabs={tabs} chosen="score" onChoose={() => undefined} />);
    expect(screen.getByText("notes")).toBeVisible();
  });
});
