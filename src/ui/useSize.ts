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
    const observer = new ResizeObserver(([entry]) => {
      const { width, height } = entry.contentRect;
      if (width > 0 && height > 0) setSize({ width: Math.round(width), height: Math.round(height) });
    });
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
