/** Gathers the licences of everything that the built folder contains into one text beside the page. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./hash.mjs";

/** What the tools put in by themselves: the service worker and its loader, and how chunks are loaded. */
const PUT_IN = [
  "@trickfilm400/rollup-plugin-off-main-thread",
  "rolldown",
  "vite",
  "vite-plugin-pwa",
  "workbox-core",
  "workbox-precaching",
  "workbox-routing",
  "workbox-strategies",
];

const NAME = /^(@[^/]+\/)?[^/]+/;
const RULE = `\n${"-".repeat(78)}\n\n`;

/** Folder of the package that a module is from; null where it is our own or a tool's. */
function packageOf(moduleId) {
  const path = moduleId.replaceAll("\\", "/");
  const at = path.lastIndexOf("/node_modules/");
  if (at < 0 || path.startsWith("\0")) return null;
  const start = at + "/node_modules/".length;
  return path.slice(0, start) + path.slice(start).match(NAME)[0];
}

/** A package that itself contains others lists theirs below its own; those stay with the tool. */
function ownText(text) {
  return text.split(/^# Licenses of bundled dependencies/m)[0].trim();
}

function licenceText(folder) {
  const file = readdirSync(folder).find((name) => /^(licen[sc]e|copying)/i.test(name));
  return file ? ownText(readFileSync(join(folder, file), "utf8")) : null;
}

/** A licence that is named and not enclosed is known by its name alone. */
function entry(folder) {
  const { name, version, license, author, homepage } = JSON.parse(
    readFileSync(join(folder, "package.json"), "utf8"),
  );
  const by = typeof author === "string" ? author : author?.name;
  const text = licenceText(folder) ?? [by, homepage].filter(Boolean).join("\n");
  return { name, head: `${name} ${version}\nLicence: ${license}`, text };
}

function document(folders) {
  const entries = [...folders].map(entry).sort((a, b) => (a.name < b.name ? -1 : 1));
  const own = `Coilwright\n\n${readFileSync(join(ROOT, "LICENSE"), "utf8").trim()}\n`;
  const first = `${own}\nIt contains the ${entries.length} packages below, each under its own licence.\n`;
  return [first, ...entries.map(({ head, text }) => `${head}\n\n${text}\n`)].join(RULE);
}

/** Two plugins over one list: the page's writes what it and the workers' have met. */
export function licences() {
  const folders = new Set();
  const meet = (moduleIds) => {
    for (const id of moduleIds) {
      const folder = packageOf(id);
      if (folder) folders.add(folder);
    }
  };
  const workers = { name: "licences-of-workers", generateBundle: (_, bundle) => meet(modulesIn(bundle)) };
  const page = {
    name: "licences",
    apply: "build",
    generateBundle(_, bundle) {
      meet(modulesIn(bundle));
      // styles and fonts are no modules of any chunk
      meet([...this.getModuleIds()].filter((id) => /\.css$/.test(id)));
      for (const name of PUT_IN) folders.add(join(ROOT, "node_modules", name).replaceAll("\\", "/"));
      this.emitFile({ type: "asset", fileName: "licences.txt", source: document(folders) });
    },
  };
  return { page, workers };
}

function modulesIn(bundle) {
  return Object.values(bundle).flatMap((file) => (file.type === "chunk" ? file.moduleIds : []));
}
