import { act, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { serialiseDesign } from "../../../src/design/design";
import { pierHallLeft } from "../../../src/design/examples";
import { Versions } from "../../../src/panels/versions/Versions";
import type { KeptVersion, VersionSummary } from "../../../src/workbench/keeping/version";
import { workbench } from "../../../src/workbench/session/session";
import { addBrowserParts } from "../../app/browserParts";

beforeAll(addBrowserParts);

const wound = { ...pierHallLeft, secondary: { ...pierHallLeft.secondary, turns: 1234 } };

function version(id: string, changes: Partial<KeptVersion> = {}): KeptVersion {
  const at = "2026-05-20T10:00:00Z";
  const text = serialiseDesign(wound);
  return {
    id,
    kind: "design",
    designId: "left",
    title: `Title ${id}`,
    at,
    cause: "during editing",
    binned: false,
    text,
    ...changes,
  };
}

const kept = [
  version("a"),
  version("b", { binned: true, designId: "gone", cause: "deleted" }),
  version("c", { text: "{ no design" }),
];

let list: KeptVersion[];
let tell: () => void;

/** The versions as the workbench keeps them, without a database. */
function fakeVersions() {
  const { versions } = workbench;
  list = [...kept];
  const summary = ({ text, ...known }: KeptVersion): VersionSummary => ({
    ...known,
    periodic: false,
    offered: false,
    size: text.length,
  });
  vi.spyOn(versions, "list").mockImplementation(async () => list.map(summary));
  vi.spyOn(versions, "read").mockImplementation(async (id) => list.find((each) => each.id === id) ?? null);
  vi.spyOn(versions, "listen").mockImplementation((listener) => {
    tell = listener;
    return () => undefined;
  });
  vi.spyOn(versions, "remove").mockImplementation(async (id) => {
    list = list.filter((each) => each.id !== id);
    tell();
    return { ok: true };
  });
}

const row = (id: string) => screen.findByRole("button", { name: new RegExp(`Title ${id}`) });
const button = (name: string) => screen.getByRole("button", { name });

beforeEach(() => {
  act(() => workbench.resetToExamples());
  fakeVersions();
  render(<Versions />);
});

describe("the screen of versions and bin", () => {
  it("goes to the bin where its address is typed while the versions are open", async () => {
    await row("a");
    act(() => {
      window.location.hash = "#bin";
      window.dispatchEvent(new HashChangeEvent("hashchange"));
    });
    expect(await screen.findByRole("tab", { name: /^Bin/ })).toHaveAttribute("aria-selected", "true");
    window.location.hash = "";
  });

  it("shows only what differs from now, and says what restoring does", async () => {
    await userEvent.click(await row("a"));
    const rows = (await screen.findAllByRole("row")).map((each) => each.textContent);
    expect(rows).toHaveLength(2);
    expect(rows[1]).toMatch(/^SecondaryTurns1234.turns1480.turns$/);
    expect(screen.getByText(/replaces “Pier hall, left coil”.*You can undo this/)).toBeInTheDocument();
  });

  it("offers a version that cannot be read as a file alone, and says why", async () => {
    await userEvent.click(await row("c"));
    expect(await screen.findByText(/cannot be opened here/)).toBeInTheDocument();
    expect(button("Restore")).toBeDisabled();
    expect(button("Export as a file")).toBeEnabled();
  });

  it("tells why a version could not be restored", async () => {
    vi.spyOn(workbench.versions, "restore").mockResolvedValue({
      ok: false,
      sentence: "The disk is full.",
      faults: [],
    });
    await userEvent.click(await row("a"));
    await userEvent.click(button("Restore"));
    expect(await screen.findByText("The disk is full.")).toBeInTheDocument();
  });

  it("deletes for good after a question alone", async () => {
    await userEvent.click(await row("a"));
    await userEvent.click(button("Delete permanently"));
    await userEvent.click(within(screen.getByRole("dialog")).getByRole("button", { name: "Cancel" }));
    expect(list).toHaveLength(3);
    await userEvent.click(button("Delete permanently"));
    await userEvent.click(
      within(screen.getByRole("dialog")).getByRole("button", { name: "Delete permanently" }),
    );
    expect(await screen.findByText("The version is deleted.")).toBeInTheDocument();
    expect(list.map(({ id }) => id)).toEqual(["b", "c"]);
  });

  it("has words where there is nothing, and where nothing can be kept", async () => {
    await row("a");
    list = [];
    act(tell);
    expect(await screen.findByText(/There is no earlier version of the open design yet/)).toBeInTheDocument();
    vi.spyOn(workbench.versions, "list").mockRejectedValue(new Error("No versions are kept here."));
    act(tell);
    expect(await screen.findByText("No versions are kept here.")).toBeInTheDocument();
  });
});
