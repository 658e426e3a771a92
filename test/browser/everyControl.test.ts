import { expect, it } from "vitest";
import { begin } from "./support/begin";
import { pressEveryControl } from "./support/everyControl";

/** Fewest presses of each kind: fewer, and the walk has passed something by. */
const FEWEST = {
  tab: 4,
  menu: 1,
  menuitem: 10,
  summary: 6,
  help: 60,
  popover: 60,
  legend: 8,
  select: 6,
  switch: 3,
};

it("presses every control of the example once, and nothing fails, empties the page or shows a raw value", async () => {
  const { page, faults } = await begin();
  let downloads = 0;
  page.on("download", () => {
    downloads += 1;
  });
  const { pressed, kinds, troubles } = await pressEveryControl(page);
  const counts = Object.entries(kinds).map(([kind, count]) => `${count} ${kind}`);
  process.stdout.write(
    `every control: ${pressed} pressed (${counts.join(", ")}), ${downloads} files saved\n`,
  );
  expect(troubles).toEqual([]);
  expect(faults).toEqual([]);
  for (const [kind, fewest] of Object.entries(FEWEST))
    expect(kinds[kind] ?? 0, kind).toBeGreaterThanOrEqual(fewest);
  expect(pressed).toBeGreaterThan(300);
  expect(downloads).toBeGreaterThanOrEqual(4);
}, 300_000);
