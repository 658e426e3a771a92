/** A browser with a profile that outlives it, to be ended in every way a browser ends. */
import { type ChildProcess, spawn } from "node:child_process";
import { type Browser, type BrowserContext, chromium } from "playwright-core";
import type { Launching } from "../../browser/support/launching";
import type { WindowSize } from "../lab";

export interface OwnBrowser {
  context: BrowserContext;
  /** as a power cut does: every process at once, nothing written any more */
  kill(): Promise<void>;
  /** as its user does */
  close(): Promise<void>;
}

const LISTENING = /DevTools listening on (ws:\S+)/;
/** ms */
const START = 30_000;

/** The address at which a starting browser takes commands. */
function endpointOf(process: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    const timer = setTimeout(() => reject(new Error(`the browser did not start: ${said}`)), START);
    process.stderr?.on("data", (data) => {
      said += data;
      const found = LISTENING.exec(said);
      if (!found) return;
      clearTimeout(timer);
      resolve(found[1]);
    });
    process.once("exit", () => reject(new Error(`the browser ended at its start: ${said}`)));
  });
}

function ended(process: ChildProcess): Promise<void> {
  if (process.exitCode !== null || process.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => process.once("exit", () => resolve()));
}

/** A profile that a killed browser has left looks locked until its lock is taken away, which a browser does itself. */
export async function ownBrowser(
  { executablePath, args, env }: Launching,
  profile: string,
  window: WindowSize,
): Promise<OwnBrowser> {
  const process = spawn(
    executablePath,
    [
      ...args,
      "--headless",
      "--remote-debugging-port=0",
      `--user-data-dir=${profile}`,
      `--window-size=${window.width},${window.height}`,
    ],
    { env, detached: true, stdio: ["ignore", "ignore", "pipe"] },
  );
  const browser: Browser = await chromium.connectOverCDP(await endpointOf(process));
  const [context] = browser.contexts();
  return {
    context,
    async kill() {
      if (process.pid !== undefined) globalThis.process.kill(-process.pid, "SIGKILL");
      await ended(process);
      await browser.close().catch(() => undefined);
    },
    async close() {
      const session = await browser.newBrowserCDPSession();
      await session.send("Browser.close").catch(() => undefined);
      await ended(process);
    },
  };
}
