import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { inject, onTestFinished } from "vitest";

export interface PageOptions {
  /** px, 1440 × 900 unless told */
  width?: number;
  height?: number;
  colorScheme?: "light" | "dark";
  /** “allow” where a test is about working offline: keeping the whole program costs each page a second */
  serviceWorkers?: "allow" | "block";
  /** relative to the address of the build */
  path?: string;
}

export interface OpenPage {
  page: Page;
  /** errors on the console, exceptions that nobody caught, and requests that left the machine */
  faults: string[];
}

let browser: Promise<Browser> | undefined;

function connected(): Promise<Browser> {
  const fault = inject("browserFault");
  if (fault) throw new Error(fault);
  browser ??= chromium.connect(inject("browserEndpoint"));
  return browser;
}

function listen(context: BrowserContext, page: Page, address: string): string[] {
  const faults: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  page.on("pageerror", (error) => faults.push(String(error)));
  context.on("request", (request) => {
    const url = request.url();
    if (/^https?:/.test(url) && !url.startsWith(address)) faults.push(`request to ${url}`);
  });
  return faults;
}

/** A page of the production build with a storage of its own; closed when the test ends. */
export async function openPage(options: PageOptions = {}): Promise<OpenPage> {
  const address = inject("address");
  const context = await (await connected()).newContext({
    viewport: { width: options.width ?? 1440, height: options.height ?? 900 },
    colorScheme: options.colorScheme ?? "light",
    locale: "en-GB",
    timezoneId: "UTC",
    serviceWorkers: options.serviceWorkers ?? "block",
  });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const faults = listen(context, page, address);
  await page.goto(new URL(options.path ?? "", address).href);
  return { page, faults };
}

/** Number of pages of a printed document. */
export function pageCount(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}
