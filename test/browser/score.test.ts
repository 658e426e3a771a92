import { writeMidi } from "midi-file";
import type { Download, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { openPage } from "./support/page";
import { violations } from "./support/violations";

/** Two parts of eight notes, high and low. */
function duet(): Buffer {
  const track = (channel: number, key: number) => [
    ...Array.from({ length: 8 }, (_, step) => [
      { deltaTime: 0, type: "noteOn" as const, channel, noteNumber: key + step, velocity: 110 },
      { deltaTime: 240, type: "noteOff" as const, channel, noteNumber: key + step, velocity: 0 },
    ]).flat(),
    { deltaTime: 0, type: "endOfTrack" as const, meta: true as const },
  ];
  const header = { format: 1 as const, numTracks: 2, ticksPerBeat: 480 };
  return Buffer.from(writeMidi({ header, tracks: [track(0, 72), track(1, 43)] }));
}

async function bytesOf(download: Download): Promise<Buffer> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk);
  return Buffer.concat(chunks);
}

async function downloaded(page: Page, button: string): Promise<Buffer> {
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: button }).click();
  return bytesOf(await coming);
}

async function openDuet(page: Page): Promise<void> {
  await page.getByRole("dialog").getByRole("button").last().click();
  await page.getByRole("tab", { name: "Score" }).click();
  const buffer = duet();
  await page
    .getByLabel("Open a Standard MIDI File")
    .setInputFiles({ name: "duet.mid", mimeType: "audio/midi", buffer });
  await page.getByRole("img", { name: "Piano roll of the Right coil" }).waitFor();
}

describe("the score in a real browser", () => {
  it("opens a file for two coils, plays it, and gives both exports", async () => {
    const { page, faults } = await openPage();
    await openDuet(page);
    const coils = await page.getByRole("combobox", { name: /Destination/ }).all();
    expect(await Promise.all(coils.map((coil) => coil.inputValue()))).toEqual(["left", "right"]);

    const mains = page.getByRole("img", { name: /^Mains current of the Left coil/ });
    expect(await mains.getAttribute("aria-label")).toMatch(/worst value [\d.]+.A$/);
    await page
      .getByText(/from the design's own burst/)
      .first()
      .waitFor();

    const position = page.getByRole("slider", { name: "Position in the score" });
    await page.getByRole("button", { name: "Play" }).click();
    await expect
      .poll(async () => Number(await position.inputValue()), { timeout: 5000 })
      .toBeGreaterThan(0.2);
    await page.getByRole("button", { name: "Pause" }).click();
    await page
      .getByRole("img", { name: "Piano roll of the Left coil" })
      .click({ position: { x: 300, y: 20 } });
    await expect.poll(async () => Number(await position.inputValue())).toBeGreaterThan(1);
    const head = page.getByRole("region", { name: "Left coil" }).getByTestId("playhead");
    expect(await head.evaluate((line) => Number.parseFloat(line.style.left))).toBeGreaterThan(50);

    const csv = (await downloaded(page, "Gate schedule (CSV)")).toString();
    expect(csv.split("\n")[0]).toBe("time,coil,onTime");
    expect(csv).toMatch(/\n0\.000000000,left,\d\.\d{9}\n/);
    expect(csv).toContain(",right,");

    const wave = await downloaded(page, "Gate wave (WAV)");
    expect(wave.toString("latin1", 0, 4)).toBe("RIFF");
    expect(wave.readUInt16LE(22)).toBe(2);
    expect(faults).toEqual([]);
  }, 60_000);

  it("plays by hand and couples the pair in a worker", async () => {
    const { page, faults } = await openPage();
    await openDuet(page);
    await page.getByRole("heading", { name: "Live keyboard" }).click();
    await page.getByRole("button", { name: "A3", exact: true }).focus();
    await page.keyboard.down("h");
    await page.getByText(/A3: 220.*junction/).waitFor();
    await expect
      .poll(async () => Number.parseFloat((await page.getByLabel("Present duty").textContent()) ?? ""), {
        timeout: 5000,
      })
      .toBeGreaterThan(1);
    await page.keyboard.up("h");
    await page.getByText("No tone is sounding.").waitFor();

    await page.getByRole("heading", { name: "The pair of coils" }).click();
    await page.getByText(/The pair resonates at/).waitFor();
    await page.getByText(/A burst of the right coil raises the idle left coil/).waitFor();
    await page.getByRole("textbox", { name: "Spacing of the coils" }).fill("1 m");
    await page.keyboard.press("Enter");
    await page.getByText(/the sparks can meet/).waitFor();
    expect(faults).toEqual([]);
  }, 60_000);

  it("keeps the notes over a reload, and takes the opening back as one step", async () => {
    const { page, faults } = await openPage();
    await openDuet(page);
    await page
      .getByRole("combobox", { name: /Destination/ })
      .first()
      .selectOption("both");
    await page.getByText("Saved").waitFor();
    await page.waitForTimeout(800);
    await page.reload();
    await page.getByRole("tab", { name: "Score" }).click();
    await page.getByRole("img", { name: "Piano roll of the Right coil" }).waitFor();
    expect(
      await page
        .getByRole("combobox", { name: /Destination/ })
        .first()
        .inputValue(),
    ).toBe("both");

    const other = { name: "solo.mid", mimeType: "audio/midi", buffer: duet() };
    await page.getByLabel("Open a Standard MIDI File").setInputFiles(other);
    await page.getByRole("heading", { name: "solo.mid" }).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByRole("heading", { name: "duet.mid" }).waitFor();
    await page.getByRole("img", { name: "Piano roll of the Right coil" }).waitFor();
    expect(faults).toEqual([]);
  }, 60_000);

  it("travels with its show into another browser, and is known again when its file is opened", async () => {
    const { page, faults } = await openPage();
    await openDuet(page);
    const firstLane = (from: Page) => from.getByRole("combobox", { name: /Destination/ }).first();
    await firstLane(page).selectOption("both");
    await page.getByRole("textbox", { name: "Name of the show" }).fill("Autumn tour");
    await page.keyboard.press("Enter");
    await page
      .getByLabel("Open a Standard MIDI File")
      .setInputFiles({ name: "again.mid", mimeType: "audio/midi", buffer: duet() });
    await page.getByRole("status").filter({ hasText: "The same score: its lanes were kept." }).waitFor();
    expect(await firstLane(page).inputValue()).toBe("both");

    await page.getByRole("button", { name: "Designs and files" }).click();
    const coming = page.waitForEvent("download");
    await page.getByRole("menuitem", { name: "Export show with its score" }).click();
    const exported = await coming;
    expect(exported.suggestedFilename()).toBe("autumn-tour.coilwright-show.json");
    const csv = (await downloaded(page, "Gate schedule (CSV)")).toString();

    const other = await openPage();
    await other.page.getByRole("dialog").getByRole("button").last().click();
    const chosen = other.page.waitForEvent("filechooser");
    await other.page.getByRole("button", { name: "Designs and files" }).click();
    await other.page.getByRole("menuitem", { name: "Open file" }).click();
    const buffer = await bytesOf(exported);
    await (await chosen).setFiles({ name: "tour.json", mimeType: "application/json", buffer });
    await other.page.getByRole("button", { name: "Open and save present show as version" }).click();
    await other.page.getByRole("tab", { name: "Score" }).click();
    await other.page.getByRole("heading", { name: "again.mid" }).waitFor();
    await other.page.getByRole("img", { name: "Piano roll of the Right coil" }).waitFor();
    expect(await firstLane(other.page).inputValue()).toBe("both");
    expect((await downloaded(other.page, "Gate schedule (CSV)")).toString()).toBe(csv);
    expect(faults).toEqual([]);
    expect(other.faults).toEqual([]);
  }, 60_000);

  it("can be used by everyone, with all its parts open", async () => {
    const { page } = await openPage();
    await openDuet(page);
    for (const part of ["Live keyboard", "Test pulses", "The pair of coils"])
      await page.getByRole("heading", { name: part }).click();
    await page.getByText(/The pair resonates at/).waitFor();
    expect(await violations(page)).toEqual([]);
  }, 60_000);

  it("leaves the show as it is where the file is not MIDI", async () => {
    const { page } = await openPage();
    await openDuet(page);
    await page
      .getByLabel("Open a Standard MIDI File")
      .setInputFiles({ name: "notes.mid", mimeType: "audio/midi", buffer: Buffer.from("not a score") });
    const refusal = page.getByRole("alert").filter({ hasText: "notes.mid" });
    await refusal.getByRole("button", { name: "Dismiss" }).click();
    await refusal.waitFor({ state: "detached" });
    expect(await page.getByRole("heading", { name: "duet.mid" }).isVisible()).toBe(true);
  }, 60_000);
});
