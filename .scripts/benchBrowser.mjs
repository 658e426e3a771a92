import { ensureBuilt } from "./build.mjs";
import { bundled } from "./bundle.mjs";
import { ready } from "./ready.mjs";

await ready();
await ensureBuilt();
const { benchBrowser } = await import(
  await bundled(
    "bench-browser",
    "test/bench/browser.ts",
    ["src", "test/bench", "test/browser/support"],
    false,
  )
);
await benchBrowser();
