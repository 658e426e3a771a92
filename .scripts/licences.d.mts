import type { Plugin } from "vite";

export function licences(): { page: Plugin; workers: Plugin };
