import type { Plugin, Rolldown } from "vite";

export function chunkGroups(entry: string, firstPicture: readonly string[]): Rolldown.CodeSplittingGroup[];
export function programPreloaded(): Plugin;
