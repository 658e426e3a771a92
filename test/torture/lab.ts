/** Where the rows of the torture find what they try things on. */
import type { BrowserContext, LaunchOptions } from "playwright-core";

export interface Lab {
  /** address of the production build, ending in a slash */
  address: string;
  /** how a browser of its own is started, as with a profile that outlives it */
  launch: Pick<LaunchOptions, "executablePath" | "env" | "args">;
  /** a context of the shared browser with an empty storage; the row closes it */
  newContext(): Promise<BrowserContext>;
}
