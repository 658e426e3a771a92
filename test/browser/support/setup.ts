import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { ensureBuilt } from "../../../.scripts/build.mjs";
import { launching } from "./launching";
import { serve } from "./serve";

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

/** A setup that throws would fail every project, so the reason goes to the browser tests instead. */
export default async function setup(project: TestProject) {
  const open: { close: () => Promise<void> }[] = [];
  let fault = "";
  try {
    await ensureBuilt();
    const server = await serve();
    open.push(server);
    project.provide("address", server.address);
    const browser = await chromium.launchServer(launching());
    open.push(browser);
    project.provide("browserEndpoint", browser.wsEndpoint());
  } catch (error) {
    fault = `The browser tests cannot run: ${error instanceof Error ? error.message : String(error)}`;
  }
  project.provide("browserFault", fault);
  return () => Promise.all(open.map((opened) => opened.close()));
}
