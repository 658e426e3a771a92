import { act, render, screen, waitFor } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { DropTarget } from "../../src/app/DropTarget";
import { ImportRefusal } from "../../src/app/ImportRefusal";
import { useImport } from "../../src/app/useImport";
import { serialiseDesign } from "../../src/design/design";
import { pierHallLeft } from "../../src/design/examples";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "./browserParts";

beforeAll(addBrowserParts);

const show = () => session.store.getState().history.present;
const design = () => show().designs[show().open];

function dropFile(text: string, name = "coil.json") {
  const file = new File([text], name, { type: "application/json" });
  const drop = Object.assign(new Event("drop", { bubbles: true, cancelable: true }), {
    dataTransfer: { types: ["Files"], files: [file] },
  });
  return act(async () => {
    window.dispatchEvent(drop);
    await file.text();
  });
}

function Page() {
  const { importFile, refusal, forgetRefusal } = useImport();
  return (
    <>
      <DropTarget onFile={importFile} />
      <ImportRefusal refusal={refusal} onClose={forgetRefusal} />
    </>
  );
}

beforeEach(() => {
  workbench.resetToExamples();
  render(<Page />);
});

describe("a file that is dropped", () => {
  it("is opened where it is a design", async () => {
    const count = show().order.length;
    await dropFile(serialiseDesign({ ...pierHallLeft, title: "Dropped coil" }));
    await waitFor(() => expect(design().title).toBe("Dropped coil"));
    expect(show().order).toHaveLength(count + 1);
  });

  it("is refused with path and reason where it is wrong, and changes nothing", async () => {
    const before = show();
    const wrong = serialiseDesign(pierHallLeft).replace('"turns": 1480', '"turns": 0');
    expect(wrong).toContain('"turns": 0');
    await dropFile(wrong, "wrong.json");
    expect(await screen.findByRole("dialog", { name: "This file was not opened" })).toBeInTheDocument();
    expect(screen.getByText("secondary.turns")).toBeInTheDocument();
    expect(show()).toBe(before);
  });

  it("is told where to go where it is a score", async () => {
    const before = show();
    await dropFile("MThd\u0000\u0000\u0000\u0006", "tune.mid");
    expect(await screen.findByText(/Standard MIDI File: open it in the Score tab/)).toBeInTheDocument();
    expect(show()).toBe(before);
  });
});
