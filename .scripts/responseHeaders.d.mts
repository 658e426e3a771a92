import type { Plugin } from "vite";

export function responseHeaders(): Plugin;
