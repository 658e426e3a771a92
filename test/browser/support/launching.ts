import { findBrowser } from "./findBrowser";

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

export interface Launching {
  executablePath: string;
  args: string[];
  env: Record<string, string>;
}

/**
 * How a browser is started without a screen.
 * @throws where there is none, with what to do
 */
export function launching(): Launching {
  const { executablePath, environment } = findBrowser();
  return { executablePath, args: ARGUMENTS, env: { ...process.env, ...environment } as Launching["env"] };
}
