import type { Sphere, TopLoad, TopLoadElement, Toroid } from "../../calc/design-parts";
import { defaultValue } from "../../fields/defaults";
import { topLoadFields } from "../../fields/topLoadFields";

const { toroid, sphere } = topLoadFields.parts.elements.item.variants;

/** m, gap between an added element and the conductor below it */
const gap = 0.02;

/** Height of the highest conductor. */
function topOf(topLoad: TopLoad, windingTop: number): number {
  const half = (element: TopLoadElement) =>
    (element.shape === "toroid" ? element.tubeDiameter : element.diameter) / 2;
  return Math.max(windingTop, ...topLoad.elements.map((element) => element.centreHeight + half(element)));
}

/** A toroid of the default size, above everything else. */
export function newToroid(topLoad: TopLoad, windingTop: number): Toroid {
  const outerDiameter = defaultValue(toroid.outerDiameter);
  const tubeDiameter = defaultValue(toroid.tubeDiameter);
  const centreHeight = topOf(topLoad, windingTop) + gap + tubeDiameter / 2;
  return { shape: "toroid", outerDiameter, tubeDiameter, centreHeight };
}

/** A sphere of the default size, above everything else. */
export function newSphere(topLoad: TopLoad, windingTop: number): Sphere {
  const diameter = defaultValue(sphere.diameter);
  return { shape: "sphere", diameter, centreHeight: topOf(topLoad, windingTop) + gap + diameter / 2 };
}

/** The elements with one of them moved to another place in the list. */
export function moved(elements: readonly TopLoadElement[], from: number, to: number): TopLoadElement[] {
  const next = [...elements];
  next.splice(to, 0, ...next.splice(from, 1));
  return next;
}
