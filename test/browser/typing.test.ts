import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { begin } from "./support/begin";

/** The browser's own command, as its menu gives it, which no key press goes before. */
async function undoByMenu(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Input.dispatchKeyEvent", { type: "keyDown", key: "Undo", commands: ["undo"] });
  await session.detach();
}
const undo = (page: Page) => page.keyboard.press("Control+z");

it("takes typing back within its own field, and never brings back a text of long ago", async () => {
  const { page, faults } = await begin();
  const turns = page.getByLabel("Turns", { exact: true }).first();
  const length = page.getByLabel("Winding length", { exact: true });
  const title = page.getByLabel("Title of the design");
  const texts = () => Promise.all([turns, length, title].map((field) => field.inputValue()));
  const before = await texts();

  await turns.fill("");
  await turns.pressSequentially("1500");
  await length.fill("");
  await length.pressSequentially("700");
  await title.focus();
  const made = await texts();
  expect(made.slice(0, 2)).toEqual(["1500", "700"]);

  // free text has the browser's own undo, within itself
  await page.keyboard.press("End");
  await page.keyboard.type(" oak");
  expect(await title.inputValue()).toBe(`${before[2]} oak`);
  for (let most = 4; most > 0 && (await title.inputValue()) !== before[2]; most--) await undo(page);
  expect(await texts()).toEqual(made);

  // then the workbench's, step by step, whatever was typed where, by the browser's menu too
  await undoByMenu(page);
  expect(await texts()).toEqual(["1500", before[1], before[2]]);
  await turns.focus();
  await page.keyboard.type("9");
  await undo(page);
  expect(await texts()).toEqual(["1500", before[1], before[2]]);
  await undo(page);
  expect(await texts()).toEqual(before);
  for (let more = 0; more < 3; more++) await undo(page);
  await undoByMenu(page);
  expect(await texts()).toEqual(before);

  // a held arrow key is one step, and the wheel is none
  await turns.focus();
  for (let held = 0; held < 5; held++) await page.keyboard.down("ArrowUp");
  await page.keyboard.up("ArrowUp");
  const stepped = await turns.inputValue();
  expect(stepped).not.toBe(before[0]);
  await turns.hover();
  await page.mouse.wheel(0, 120);
  expect(await turns.inputValue()).toBe(stepped);
  await undo(page);
  expect(await texts()).toEqual(before);
  expect(faults).toEqual([]);
});

it("replaces the whole value when it is typed over after Tab, also where the field then shows more digits", async () => {
  const { page, faults } = await begin();
  await page.getByText("inch", { exact: true }).click();
  const length = page.getByLabel("Winding length", { exact: true });
  await page.getByLabel("Former diameter", { exact: true }).focus();
  await page.keyboard.press("Tab");
  while (!(await length.evaluate((field) => field === document.activeElement)))
    await page.keyboard.press("Tab");
  expect(await length.inputValue()).toBe("22.0472440945");
  await page.keyboard.type("24");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  expect(await length.inputValue()).toBe("24");
  // a click leaves the caret where it was set
  await length.click();
  expect(
    await length.evaluate((field: HTMLInputElement) => field.selectionStart === field.selectionEnd),
  ).toBe(true);
  expect(faults).toEqual([]);
});
