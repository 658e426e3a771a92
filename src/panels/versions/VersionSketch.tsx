import { useEffect, useRef, useState } from "react";
import { CoilSketch } from "../../drawing/CoilSketch";
import type { CoilShape } from "../../drawing/coilShape";
import { useVersionDocument } from "./useVersions";
import type { ReadVersion, VersionDocument } from "./versionDocument";

/** distance from the viewport at which thumbnails are loaded */
const AHEAD = "200px";

/** Whether an element has been in view; it stays true. */
function useSeen(element: React.RefObject<Element | null>): boolean {
  const [seen, setSeen] = useState(typeof IntersectionObserver === "undefined");
  useEffect(() => {
    const watched = element.current;
    if (seen || !watched) return;
    const observer = new IntersectionObserver(
      (entries) => entries.some((entry) => entry.isIntersecting) && setSeen(true),
      { rootMargin: AHEAD },
    );
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element, seen]);
  return seen;
}

/** The coil of a design, or the coils that play in a show. */
export function shapesOf(document: VersionDocument | null): CoilShape[] {
  if (document?.kind === "design") return [document.design];
  if (document?.kind !== "show") return [];
  const { designs, left, right } = document.show;
  return right === null ? [designs[left]] : [designs[left], designs[right]];
}

interface VersionSketchProps {
  id: string;
  read: ReadVersion;
}

/** A thumbnail of a version's coils; the version is read when it comes into view. */
export function VersionSketch({ id, read }: VersionSketchProps) {
  const place = useRef<HTMLSpanElement>(null);
  const seen = useSeen(place);
  const document = useVersionDocument(seen ? id : null, read);
  return (
    <span ref={place}>
      <CoilSketch shapes={shapesOf(document)} width={56} height={56} />
    </span>
  );
}
