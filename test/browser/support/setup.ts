import { join } from "node:path";
import { type BrowserServer, chromium } from "playwright-core";
import { type PreviewServer, preview } from "vite";
import type { TestProject } from "vitest/node";
import { ensureBuilt } from "../../../.scripts/build.mjs";
import { findBrowser } from "./findBrowser";

declare module "vitest" {
  export interface ProvidedContext {
    /** address of the production build */
    address: string;
    /** where the running browser listens */
    browserEndpoint: string;
    /** why there is nothing to test with; empty when all is well */
    browserFault: string;
  }
}

const ROOT = join(import.meta.dirname, "..", "..", "..");

const ARGUMENTS = [
  "--no-sandbox",
  "--no-zygote",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

function serve(): Promise<PreviewServer> {
  return preview({ root: ROOT, logLevel: "silent", preview: { port: 0, host: "127.0.0.1" } });
}

function launch(): Promise<BrowserServer> {
  const { executablePath, environment } = findBrowser();
  const env = { ...process.env, ...environment } as Record<string, string>;
  return chromium.launchServer({ executablePath, args: ARGUMENTS, env });
}

function addressOf(server: PreviewServer): string {
  const bound = server.httpServer.address();
  if (bound === null || typeof bound === "string") throw new Error("The preview server has no port.");
  return `http://127.0.0.1:${bound.port}/`;
}

/** A setup that throws would fail every project, so the reason goes to the browser tests instead. */
export default async function setup(project: TestProject) {
  const open: { close: () => Promise<void> }[] = [];
  let fault = "";
  try {
    await ensureBuilt();
    const server = await serve();
    open.push(server);
    project.provide("address", addressOf(server));
    const browser = await launch();
    open.push(browser);
    project.provide("browserEndpoint", browser.wsEndpoint());
  } catch (error) {
    fault = `The browser tests cannot run: ${error instanceof Error ? error.message : String(error)}`;
  }
  project.provide("browserFault", fault);
  return () => Promise.all(open.map((opened) => opened.close()));
}
