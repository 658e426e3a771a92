import { type ComponentType, lazy } from "react";

type Files = Record<string, () => Promise<unknown>>;

/** A part of the screen that is fetched when it is first shown; an empty place until it is built. */
export function lazyPart(files: Files, name: string): ComponentType {
  const [load] = Object.values(files);
  if (!load) return () => null;
  return lazy(async () => ({ default: ((await load()) as Record<string, ComponentType>)[name] }));
}
