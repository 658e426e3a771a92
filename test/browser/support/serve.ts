import { join } from "node:path";
import { preview } from "vite";

/** The project's folder, from here as from a bundle in node_modules/.cache. */
const ROOT = join(import.meta.dirname, "..", "..", "..");

export interface Served {
  /** ends in a slash */
  address: string;
  close(): Promise<void>;
}

/** Serves the production build on a port that is free. */
export async function serve(): Promise<Served> {
  const server = await preview({ root: ROOT, logLevel: "silent", preview: { port: 0, host: "127.0.0.1" } });
  const bound = server.httpServer.address();
  if (bound === null || typeof bound === "string") throw new Error("The preview server has no port.");
  return { address: `http://127.0.0.1:${bound.port}/`, close: () => server.close() };
}
