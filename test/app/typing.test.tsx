import { act, fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { DesignTitle } from "../../src/app/Header";
import { Notices } from "../../src/app/Notices";
import { useShortcuts } from "../../src/app/useShortcuts";
import { DesignField } from "../../src/panels/parts/DesignField";
import { drafts } from "../../src/ui/drafts";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "./browserParts";

beforeAll(addBrowserParts);

/** The keys of the whole screen over a few of its fields. */
function Bench() {
  useShortcuts();
  return (
    <>
      <DesignTitle />
      <DesignField path="secondary.turns" />
      <DesignField path="secondary.windingLength" />
      <Notices />
    </>
  );
}

const history = () => session.store.getState().history;
const design = () => history().present.designs[history().present.open];
const turns = () => screen.getByLabelText<HTMLInputElement>("Turns");
const length = () => screen.getByLabelText<HTMLInputElement>("Winding length");
const title = () => screen.getByLabelText<HTMLInputElement>("Title of the design");
const press = (keys: string) => userEvent.keyboard(`{Control>}${keys}{/Control}`);

/** What the browser tells before its own menu takes typing back; the answer is whether it may. */
function browserUndo(target: Element, inputType = "historyUndo"): boolean {
  const event = new InputEvent("beforeinput", { inputType, bubbles: true, cancelable: true });
  act(() => void target.dispatchEvent(event));
  return !event.defaultPrevented;
}

beforeEach(() => {
  drafts.setState({}, true);
  workbench.resetToExamples();
  render(<Bench />);
});

describe("undo in a number field", () => {
  it("takes back what is typed, and then the last step", async () => {
    act(() => workbench.setValue("secondary.windingLength", 0.7));
    const before = design();
    await userEvent.type(turns(), "9");
    await press("z");
    expect(turns().value).toBe(String(before.secondary.turns));
    expect(design()).toBe(before);
    await press("z");
    expect(design().secondary.windingLength).not.toBe(0.7);
    await press("y");
    expect(design().secondary.windingLength).toBe(0.7);
  });

  it("never leaves the browser its own history, by key or by menu, whichever field that would change", async () => {
    await userEvent.type(turns(), "9");
    expect(browserUndo(turns())).toBe(false);
    expect(turns().value).toBe(String(design().secondary.turns));
    await userEvent.type(turns(), "1{Enter}");
    const stepped = design().secondary.turns;
    expect(browserUndo(title())).toBe(false);
    expect(design().secondary.turns).not.toBe(stepped);
    expect(browserUndo(turns(), "historyRedo")).toBe(false);
    expect(design().secondary.turns).toBe(stepped);
  });

  it("makes one step of arrow keys that follow one another, named by the field", async () => {
    const steps = history().past.length;
    await userEvent.type(turns(), "{ArrowUp}{ArrowUp}{Shift>}{ArrowDown}{/Shift}{ArrowUp}");
    expect(history().past.length).toBe(steps + 1);
    expect(history().past.at(-1)?.label).toBe("Turns");
  });
});

describe("undo in free text", () => {
  it("is the browser's while something is typed, and the workbench's after that", async () => {
    act(() => workbench.setValue("secondary.turns", 1500));
    await userEvent.type(title(), "!");
    expect(browserUndo(title())).toBe(true);
    await userEvent.type(title(), "{Escape}");
    expect(title().value).toBe(design().title);
    await press("z");
    expect(design().secondary.turns).not.toBe(1500);
  });

  it("never changes another field, and takes what is typed back instead", async () => {
    await userEvent.type(title(), "!");
    expect(browserUndo(turns())).toBe(false);
    expect(title().value).toBe(design().title);
  });
});

describe("a file that is made while something is typed", () => {
  beforeEach(() => {
    URL.createObjectURL = vi.fn(() => "blob:file");
    URL.revokeObjectURL = vi.fn();
    HTMLAnchorElement.prototype.click = vi.fn();
  });

  it("holds it, and the field has it taken over", async () => {
    await userEvent.clear(turns());
    await userEvent.type(turns(), "1500");
    await press("s");
    expect(design().secondary.turns).toBe(1500);
    const [blob] = vi.mocked(URL.createObjectURL).mock.lastCall ?? [];
    expect(await (blob as Blob).text()).toContain('"turns": 1500');
    expect(screen.queryByText(/cannot be used/)).toBeNull();
  });

  it("holds the last good value where it cannot be read, says so, and leaves the text to be mended", async () => {
    const before = design();
    await userEvent.type(length(), " or so");
    await press("s");
    expect(design()).toBe(before);
    expect(screen.getByText(/the last valid value is used instead/)).toBeInTheDocument();
    expect(screen.getByText(/^Winding length stays at .* mm, not “.* or so”/)).toBeInTheDocument();
    expect(length().value).toMatch(/ or so$/);
    await userEvent.type(length(), "{Escape}");
    expect(screen.queryByText(/cannot be used/)).toBeNull();
  });

  it("takes it over when the page goes", async () => {
    await userEvent.type(turns(), "{Backspace}");
    const typed = Number(turns().value);
    act(() => void fireEvent(window, new Event("pagehide")));
    expect(design().secondary.turns).toBe(typed);
  });

  it("has the browser ask before the page goes with what cannot be used, and only then", async () => {
    const leave = () => {
      const leaving = new Event("beforeunload", { cancelable: true });
      act(() => void fireEvent(window, leaving));
      return leaving.defaultPrevented;
    };
    await userEvent.type(turns(), "{Backspace}");
    const typed = Number(turns().value);
    expect(leave()).toBe(false);
    expect(design().secondary.turns).toBe(typed);
    await userEvent.type(length(), " or so");
    expect(leave()).toBe(true);
    await userEvent.type(length(), "{Escape}");
    expect(leave()).toBe(false);
  });
});
