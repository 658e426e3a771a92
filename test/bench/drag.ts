/** What a drag costs: from the pointer's event to the frame that shows it. */
import type { Page } from "playwright-core";
import { percentile } from "./longTasks";

const STEPS = 160;
const WARM_UP = 40;

/** ms of each step, as the page sees it. */
async function dragged(page: Page, label: string): Promise<number[]> {
  const box = await page.getByRole("slider", { name: label }).boundingBox();
  if (!box) throw new Error(`${label} is not in sight`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.evaluate(() => {
    const steps: number[] = [];
    Object.assign(window, { steps });
    const { port1, port2 } = new MessageChannel();
    let since = 0;
    // a message that is sent within the frame comes when that is done
    port1.onmessage = () => steps.push(performance.now() - since);
    window.addEventListener(
      "pointermove",
      (event) => {
        since = event.timeStamp;
        requestAnimationFrame(() => port2.postMessage(null));
      },
      { capture: true },
    );
  });
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 0; step < STEPS; step++) {
    const swing = Math.sin((2 * Math.PI * step) / 40);
    await page.mouse.move(x + 20 * swing, y);
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 10))));
  }
  await page.mouse.up();
  const steps = await page.evaluate(() => (window as unknown as { steps: number[] }).steps);
  return steps.slice(WARM_UP);
}

/** Prints a line for one handle. */
export async function benchDrag(page: Page, label: string): Promise<void> {
  const steps = await dragged(page, label);
  const [half, most, longest] = [0.5, 0.95, 1].map((part) => percentile(steps, part).toFixed(0));
  console.log(
    `${`drag of “${label}”`.padEnd(42)} a frame after ${half} ms, at the 95th percentile ${most} ms, at worst ${longest} ms`,
  );
}
