import { act, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeAll, beforeEach, expect, it, vi } from "vitest";
import { ReplaceDialog } from "../../src/app/ReplaceDialog";
import { exampleShow } from "../../src/design/examples";
import { drafts, putDraft } from "../../src/ui/drafts";
import { workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "./browserParts";

beforeAll(addBrowserParts);

const close = vi.fn();
const coming = { label: "open tour.json", name: "The show of tour.json", show: exampleShow() };

beforeEach(() => {
  act(() => workbench.resetToExamples());
  act(() => putDraft("left turns", { label: "Turns", text: "12x", over: 1480, kept: "1480", error: null }));
  render(<ReplaceDialog incoming={coming} onClose={close} />);
});

it("leaves no draft of the designs that go to those that come under the same names", async () => {
  await userEvent.click(screen.getByRole("button", { name: /save present show as version/ }));
  expect(drafts.getState()).toEqual({});
});

it("leaves what was typed where it stands when the question is cancelled", async () => {
  await userEvent.click(screen.getByRole("button", { name: "Cancel" }));
  expect(drafts.getState()).toHaveProperty(["left turns", "text"], "12x");
});
