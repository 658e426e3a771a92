import { bundled } from "./bundle.mjs";
import { ready } from "./ready.mjs";

await ready();
await import(await bundled("bench", "test/bench/main.ts", ["src", "test/bench"]));
