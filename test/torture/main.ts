/**
 * npm run torture: every row at its full length, with what was tried, what was lost and the worst figure.
 * `npm run torture -- kills 100 7` runs the rows whose names begin so, with 100 tries and the seed 7.
 */
import { serve } from "../browser/support/serve";
import { ALL_ROWS } from "./allRows";
import { DESKTOP, type Lab, newLab } from "./lab";
import type { TortureRow } from "./row";

const SEED = 20_261;

function line(name: string, tried: number | string, lost: number | string, worst: string): string {
  return `${name.padEnd(44)} ${String(tried).padStart(7)} ${String(lost).padStart(6)}   ${worst}`;
}

async function runRow(row: TortureRow, tries: number, seed: number, lab: Lab): Promise<boolean> {
  const began = Date.now();
  const { tried, lost, worst, losses } = await row.run(tries, seed, lab);
  const minutes = ((Date.now() - began) / 60_000).toFixed(1);
  console.log(line(row.name, tried, lost, `${worst} (${minutes} min)`));
  for (const loss of losses) console.log(`    ${loss}`);
  return lost === 0 && tried > 0;
}

/**
 * Runs the rows named, or all of them.
 * @returns whether nothing was lost
 */
export async function torture([name = "", tries, seed]: readonly string[]): Promise<boolean> {
  const rows = ALL_ROWS.filter((row) => row.name.startsWith(name));
  const server = await serve();
  const lab = newLab(server.address, DESKTOP);
  console.log(line("row", "tried", "lost", "worst"));
  let whole = rows.length > 0;
  for (const row of rows) {
    const kept = await runRow(row, Number(tries ?? row.full), Number(seed ?? SEED), lab).catch((error) => {
      console.log(line(row.name, "–", "–", `could not be run: ${error}`));
      return false;
    });
    whole &&= kept;
  }
  await lab.close();
  await server.close();
  return whole;
}
