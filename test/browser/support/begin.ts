import { type OpenPage, openPage, type PageOptions } from "./page";

/** A page of the workbench with its cautions acknowledged and the drawing there. */
export async function begin(options: PageOptions = {}): Promise<OpenPage> {
  const opened = await openPage(options);
  const { page } = opened;
  await page.getByRole("dialog").waitFor();
  for (const box of await page.getByRole("dialog").getByRole("checkbox").all()) await box.check();
  await page.getByRole("dialog").getByRole("button").last().click();
  await page.getByRole("slider", { name: "Tap on the primary" }).waitFor();
  return opened;
}
