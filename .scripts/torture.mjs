import { ensureBuilt } from "./build.mjs";
import { bundled } from "./bundle.mjs";
import { ready } from "./ready.mjs";

await ready();
await ensureBuilt();
const { torture } = await import(await bundled("torture", "test/torture/main.ts", ["src", "test"], false));
process.exitCode = (await torture(process.argv.slice(2))) ? 0 : 1;
