import { type RefObject, useLayoutEffect, useState } from "react";

export interface Size {
  width: number;
  height: number;
}

/** The size of an element, followed as it changes. */
export function useSize(element: RefObject<Element | null>, initial: Size): Size {
  const [size, setSize] = useState(initial);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched || typeof ResizeObserver === "undefined") return;
    const take = ({ width, height }: Size) => {
      if (width > 0 && height > 0) setSize({ width: Math.round(width), height: Math.round(height) });
    };
    // at once, so that nothing is drawn in the initial size first
    take({ width: watched.clientWidth, height: watched.clientHeight });
    const observer = new ResizeObserver(([entry]) => take(entry.contentRect));
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
