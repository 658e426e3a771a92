import { bundled } from "./bundle.mjs";
import { ready } from "./ready.mjs";

const SOURCES = ["src/door", "src/evaluation", "src/design", "src/calc", "src/units"];

try {
  await ready();
  await import(await bundled("door", "src/door/main.ts", SOURCES));
} catch (error) {
  process.stderr.write(`The door failed: ${error.stack ?? error}\n`);
  process.exitCode = 1;
}
