import { join } from "node:path";
import react from "@vitejs/plugin-react";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig, type TestProjectConfiguration } from "vitest/config";
import { chunkGroups, programPreloaded } from "./.scripts/chunks.mjs";
import { licences } from "./.scripts/licences.mjs";
import { referenceTable } from "./.scripts/referenceTable.mjs";
import { responseHeaders } from "./.scripts/responseHeaders.mjs";
import program from "./package.json" with { type: "json" };
import { designJsonSchema } from "./src/design/jsonSchema";

/** The JSON Schema of a design's file, published beside the page. */
function publishedSchema() {
  return {
    name: "published-schema",
    apply: "build" as const,
    generateBundle(this: { emitFile: (file: { type: "asset"; fileName: string; source: string }) => void }) {
      const source = `${JSON.stringify(designJsonSchema(), null, 2)}\n`;
      this.emitFile({ type: "asset", fileName: "design.schema.json", source });
    },
  };
}

/** Everything that the page needs is kept on the machine; a new version waits until it is asked for. */
const offline = VitePWA({
  registerType: "prompt",
  injectRegister: false,
  includeAssets: ["mark.svg"],
  manifest: {
    name: "Coilwright",
    short_name: "Coilwright",
    description: "A design workbench for solid-state, double-resonant Tesla coils.",
    display: "standalone",
    start_url: ".",
    scope: ".",
    theme_color: "#f4ecdb",
    background_color: "#f4ecdb",
    icons: [{ src: "mark.svg", sizes: "any", type: "image/svg+xml" }],
  },
  workbox: { globPatterns: ["**/*.{js,css,html,svg,woff2,txt}"], navigateFallback: "index.html" },
});

const inSource = (path: string) => join(import.meta.dirname, "src", path);

const node = (name: string, include: string[], rest: object = {}): TestProjectConfiguration => ({
  extends: true,
  test: { name, environment: "node", include, setupFiles: ["test/properties.setup.ts"], ...rest },
});

const folders = (names: string[]) => names.map((name) => `test/${name}/**/*.test.{ts,tsx}`);

const screen = (
  name: string,
  names: string[],
  setup: string[],
  rest: object = {},
): TestProjectConfiguration => ({
  extends: true,
  test: {
    name,
    environment: "jsdom",
    isolate: false,
    include: folders(names),
    setupFiles: ["test/component.setup.ts", ...setup, "test/properties.setup.ts"],
    ...rest,
  },
});

const LOGIC = ["calc", "design", "fields", "units", "evaluation", "music", "door"];
const SCREEN = ["panels", "charts", "drawing", "sheet"];
/** They change what lasts as long as a page, and each file needs one of its own. */
const PAGE = ["app", "workbench"];

const licenceTexts = licences();

export default defineConfig({
  base: "./",
  // one page: any other address is not found, instead of answered with the page
  appType: "mpa",
  preview: { cors: false },
  plugins: [
    react(),
    referenceTable(),
    programPreloaded(),
    responseHeaders(),
    publishedSchema(),
    licenceTexts.page,
    offline,
  ],
  worker: { format: "es", plugins: () => [licenceTexts.workers] },
  define: { "import.meta.env.PROGRAM_VERSION": JSON.stringify(program.version) },
  build: {
    target: "es2023",
    chunkSizeWarningLimit: 900,
    rolldownOptions: {
      output: {
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: chunkGroups(inSource("app/start.ts"), [
            inSource("app/main.tsx"),
            inSource("drawing/CrossSection.tsx"),
          ]),
        },
      },
    },
  },
  test: {
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // a busy machine takes its time to come to what is waited for
    expect: { poll: { timeout: 10_000 } },
    maxConcurrency: 2,
    maxWorkers: 2,
    projects: [
      // what has no screen keeps nothing from one file to the next
      node("unit", ["test/*.test.ts", ...folders(LOGIC)], { isolate: false }),
      screen("parts", ["ui"], []),
      screen("component", SCREEN, ["test/session.setup.ts"]),
      screen("page", PAGE, ["test/session.setup.ts"], { isolate: true }),
      node("reference", folders(["reference"]), { isolate: false }),
      node("browser", folders(["browser"]), {
        globalSetup: ["test/browser/support/setup.ts"],
        // a browser takes both cores of a small machine: after all else, one file at a time
        fileParallelism: false,
        sequence: { groupOrder: 1 },
        testTimeout: 60_000,
        hookTimeout: 60_000,
      }),
    ],
  },
});
