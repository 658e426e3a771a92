import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { hashOf, ROOT, whenChanged } from "./hash.mjs";

/**
 * Bundles a program for plain Node, which runs no TypeScript, into node_modules/.cache unless exactly
 * these sources are bundled already.
 * @param name folder of the bundle
 * @param entry file of the program, relative to the project
 * @param sources what the bundle depends on
 * @param whole whether the packages it uses are bundled too, for a quick start
 * @returns address of the bundled program
 */
export async function bundled(name, entry, sources, whole = true) {
  const folder = join("node_modules", ".cache", name);
  await whenChanged(join(folder, ".source-hash"), hashOf([...sources, "package-lock.json"]), () =>
    bundle(folder, entry, whole),
  );
  return pathToFileURL(join(ROOT, folder, "program.mjs")).href;
}

async function bundle(folder, entry, whole) {
  const { build } = await import("vite");
  rmSync(join(ROOT, folder), { recursive: true, force: true });
  mkdirSync(join(ROOT, folder), { recursive: true });
  await build({
    configFile: false,
    root: ROOT,
    logLevel: "error",
    publicDir: false,
    ssr: { noExternal: whole || undefined },
    build: {
      ssr: join(ROOT, entry),
      outDir: folder,
      target: "node20",
      rollupOptions: { output: { entryFileNames: "program.mjs" } },
    },
  });
}
