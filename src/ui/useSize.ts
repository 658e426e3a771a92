import { type RefObject, useLayoutEffect, useState } from "react";

export interface Size {
  width: number;
  height: number;
}

/** The size of an element, updated when it changes. */
export function useSize(element: RefObject<Element | null>, initial: Size): Size {
  const [size, setSize] = useState(initial);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched || typeof ResizeObserver === "undefined") return;
    const update = ({ width, height }: Size) => {
      if (width > 0 && height > 0) setSize({ width: Math.round(width), height: Math.round(height) });
    };
    // measured before the first paint, so that nothing is drawn in the initial size
    update({ width: watched.clientWidth, height: watched.clientHeight });
    const observer = new ResizeObserver(([entry]) => update(entry.contentRect));
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
