import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { packedBrowser } from "./packedBrowser";

export interface FoundBrowser {
  executablePath: string;
  environment: Record<string, string>;
}

const NAMES = [
  "google-chrome-stable",
  "google-chrome",
  "chromium",
  "chromium-browser",
  "microsoft-edge-stable",
];

const MAC = ["Google Chrome", "Chromium", "Microsoft Edge"].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
);

const WINDOWS = ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"].flatMap((variable) => {
  const folder = process.env[variable];
  if (!folder) return [];
  return [
    join(folder, "Google", "Chrome", "Application", "chrome.exe"),
    join(folder, "Chromium", "Application", "chrome.exe"),
    join(folder, "Microsoft", "Edge", "Application", "msedge.exe"),
  ];
});

function onPath(): string[] {
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
}

function installed(): FoundBrowser | null {
  const executablePath = [...onPath(), ...MAC, ...WINDOWS].find((path) => existsSync(path));
  return executablePath ? { executablePath, environment: {} } : null;
}

/**
 * CHROME_PATH, else an installed browser, else the packed one; in continuous integration the packed
 * one first, so that results do not depend on the machine.
 * @throws where there is none, with what to do
 */
export function findBrowser(): FoundBrowser {
  const given = process.env.CHROME_PATH;
  if (given) return { executablePath: given, environment: {} };
  const found = process.env.CI ? (packedBrowser() ?? installed()) : (installed() ?? packedBrowser());
  if (found) return found;
  throw new Error(
    "No browser was found. Install Chrome, Chromium or Edge, or set CHROME_PATH to the program of one.",
  );
}
