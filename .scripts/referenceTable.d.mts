import type { Plugin } from "vite";

export function referenceTable(): Plugin;
