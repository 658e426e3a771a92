/**
 * The browser that comes with the packages (Linux on x64), unpacked into node_modules/.cache with the
 * system libraries and the fonts it needs, so that a bare machine without root can run the tests.
 */
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { brotliDecompressSync } from "node:zlib";
import type { FoundBrowser } from "./findBrowser";

const ROOT = join(import.meta.dirname, "..", "..", "..");
const HOME = join(ROOT, "node_modules", ".cache", "packed-browser");
const BINARIES = join(
  dirname(createRequire(import.meta.url).resolve("@sparticuz/chromium")),
  "..",
  "..",
  "bin",
);

function decompressed(name: string): Buffer {
  return brotliDecompressSync(readFileSync(join(BINARIES, name)));
}

function unpackArchive(name: string, into: string): void {
  execFileSync("tar", ["-x", "--no-same-owner", "-C", into], { input: decompressed(name) });
}

/** Without fonts a printed page comes out with no text. */
function fontConfiguration(home: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(home, "fonts")}</dir>
  <cachedir>${join(home, "font-cache")}</cachedir>
  <match target="pattern">
    <edit name="family" mode="append"><string>Open Sans</string></edit>
  </match>
</fontconfig>
`;
}

/** Unpacks aside and renames, so that a run that was broken off leaves nothing half done. */
function unpack(): void {
  const aside = `${HOME}.${process.pid}`;
  mkdirSync(aside, { recursive: true });
  writeFileSync(join(aside, "chromium"), decompressed("chromium.br"), { mode: 0o755 });
  for (const archive of ["swiftshader.tar.br", "al2023.tar.br", "fonts.tar.br"])
    unpackArchive(archive, aside);
  writeFileSync(join(aside, "fonts.conf"), fontConfiguration(HOME));
  rmSync(HOME, { recursive: true, force: true });
  renameSync(aside, HOME);
}

/** The packed browser, unpacked at its first use; null on machines it does not run on. */
export function packedBrowser(): FoundBrowser | null {
  if (process.platform !== "linux" || process.arch !== "x64" || !existsSync(BINARIES)) return null;
  const executablePath = join(HOME, "chromium");
  if (!existsSync(executablePath)) unpack();
  const libraries = [join(HOME, "lib"), HOME, process.env.LD_LIBRARY_PATH].filter(Boolean).join(":");
  return {
    executablePath,
    environment: { LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: join(HOME, "fonts.conf") },
  };
}
