import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureBuilt } from "./build.mjs";
import { ROOT } from "./hash.mjs";
import { ready } from "./ready.mjs";

const DEFAULT_PORT = 4317;

function portWanted() {
  const given = process.env.PORT;
  if (given === undefined || given === "") return DEFAULT_PORT;
  const port = Number(given);
  if (Number.isInteger(port) && port > 0 && port < 65536) return port;
  throw new Error(`PORT is “${given}”; it must be a whole number from 1 to 65535.`);
}

async function serve(port) {
  const entry = join(ROOT, "node_modules", "vite", "dist", "node", "index.js");
  const { preview } = await import(pathToFileURL(entry).href);
  const options = { port, strictPort: true, host: "127.0.0.1" };
  await preview({ root: ROOT, logLevel: "warn", preview: options });
}

try {
  const port = portWanted();
  await ready();
  await ensureBuilt();
  await serve(port).catch((error) => {
    if (!/in use|EADDRINUSE/.test(error.message)) throw error;
    throw new Error(
      `Port ${port} is taken by another program. Set another one: PORT=${port + 1} npm start (on Windows: set PORT=${port + 1} first).`,
    );
  });
  process.stdout.write(`Coilwright is at http://127.0.0.1:${port}/ (Ctrl+C ends it)\n`);
} catch (error) {
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}
