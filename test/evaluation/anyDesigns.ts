/**
 * Designs that nobody would build but a form lets in: every number anywhere in its declared range, every choice and
 * part there or not. Most are then laid out so that they can be solved; the rest stay as they fell.
 */
import type { TopLoadElement } from "../../src/calc/design-parts";
import { fieldValues, withValueAt } from "../../src/design/changeAt";
import type { Design } from "../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { allFields } from "../../src/fields/allFields";
import type { NumberField } from "../../src/fields/field";
import { randomCoil, seeded } from "../calc/coil/randomCoils";

type Random = () => number;

function oneOf<Choice>(random: Random, choices: readonly Choice[]): Choice {
  return choices[Math.floor(random() * choices.length)];
}

/** As many small values as large ones; a range that begins at nothing has nothing itself now and then. */
function drawn(random: Random, { range, meaning, nullable }: NumberField): number | null {
  if (nullable && random() < 0.4) return null;
  const { minimum, maximum } = range;
  if (minimum === 0 && random() < 0.2) return 0;
  const least = minimum > 0 ? minimum : 1e-4 * maximum;
  const value =
    minimum < 0 ? minimum + random() * (maximum - minimum) : least * (maximum / least) ** random();
  return meaning.whole ? Math.round(value) : value;
}

function element(random: Random): TopLoadElement {
  const centreHeight = 1;
  return random() < 0.7
    ? { shape: "toroid", outerDiameter: 0.4, tubeDiameter: 0.1, centreHeight }
    : { shape: "sphere", diameter: 0.2, centreHeight };
}

/** With every part that may be there or not, and as many of each list as there may be. */
function withParts(design: Design, random: Random): Design {
  const count = oneOf(random, [0, 1, 1, 1, 2, 3, 8]);
  const rail = { radius: 0.3, tubeDiameter: 0.01, height: 0.2 };
  return {
    ...design,
    topLoad: {
      ...design.topLoad,
      elements:
        random() < 0.5 ? design.topLoad.elements : Array.from({ length: count }, () => element(random)),
      breakoutPoint: random() < 0.5 ? design.topLoad.breakoutPoint : null,
    },
    primary: { ...design.primary, strikeRail: random() < 0.3 ? rail : null },
    tuningAim: random() < 0.5 ? { kind: "spark", length: 0.5 } : { kind: "unloaded" },
  };
}

/** Each number drawn anew with a probability; each choice and switch too. */
function redrawn(design: Design, random: Random, probability: number): Design {
  let next = design;
  for (const field of allFields) {
    if (field.path === "tuningAim.kind") continue;
    for (const { path } of fieldValues(next, field.path)) {
      if (random() >= probability) continue;
      if (field.kind === "number") next = withValueAt(next, path, drawn(random, field));
      else if (field.kind === "choice") next = withValueAt(next, path, oneOf(random, field.options));
      else next = withValueAt(next, path, random() < 0.5);
    }
  }
  return next;
}

function above(element: TopLoadElement, top: number, random: Random): TopLoadElement {
  const gap = 1e-3 * 300 ** random();
  if (element.shape === "sphere") return { ...element, centreHeight: top + gap + element.diameter / 2 };
  const tubeDiameter = Math.min(element.tubeDiameter, 0.48 * element.outerDiameter);
  return { ...element, tubeDiameter, centreHeight: top + gap + tubeDiameter / 2 };
}

function stacked(elements: readonly TopLoadElement[], windingTop: number, random: Random): TopLoadElement[] {
  let top = windingTop;
  return elements.map((each) => {
    const placed = above(each, top, random);
    top = placed.centreHeight + (placed.shape === "sphere" ? placed.diameter : placed.tubeDiameter) / 2;
    return placed;
  });
}

/** Wire that fits its pitch, a primary outside the former and above the ground, a top load above the winding. */
function laidOut(design: Design, random: Random): Design {
  const { secondary, primary, topLoad, room } = design;
  const gap = () => 1e-3 * 100 ** random();
  const overallDiameter = Math.min(secondary.wire.overallDiameter, secondary.windingLength / secondary.turns);
  const conductorDiameter = Math.min(secondary.wire.conductorDiameter, 0.93 * overallDiameter);
  const tubeDiameter = primary.tubeDiameter;
  const outside = secondary.formerDiameter / 2 + overallDiameter + tubeDiameter / 2 + gap();
  const innerRadius = Math.max(primary.innerRadius, outside);
  const pitch = Math.max(primary.pitch, tubeDiameter * (1.02 + random()));
  const baseHeight = Math.max(primary.baseHeight, tubeDiameter);
  const reach = innerRadius + (primary.turns + 1) * pitch;
  const windingTop = secondary.baseHeight + secondary.windingLength;
  const elements = stacked(topLoad.elements, windingTop, random);
  const last = elements.at(-1);
  const top = last ? last.centreHeight + 1 : windingTop + 1;
  return {
    ...design,
    secondary: {
      ...secondary,
      wire: { ...secondary.wire, overallDiameter, conductorDiameter },
      baseHeight: Math.max(secondary.baseHeight, 1e-3),
    },
    topLoad: { ...topLoad, elements },
    primary: {
      ...primary,
      innerRadius,
      pitch,
      baseHeight,
      tap: Math.min(primary.tap, primary.turns * (0.3 + 0.7 * random())),
      wallThickness: Math.min(primary.wallThickness, tubeDiameter / 2),
      strikeRail: primary.strikeRail && {
        ...primary.strikeRail,
        radius: Math.max(primary.strikeRail.radius, reach),
        height: Math.max(primary.strikeRail.height, primary.strikeRail.tubeDiameter),
      },
    },
    room: {
      ...room,
      ceilingHeight: room.ceilingHeight && Math.max(room.ceilingHeight, top),
      wallDistance: room.wallDistance && Math.max(room.wallDistance, 2 * reach, 2),
    },
  };
}

function anyDesign(random: Random): Design {
  const start = oneOf(random, [pierHallLeft, pierHallRight, randomCoil(random)]);
  const probability = oneOf(random, [0.03, 0.1, 0.3, 1]);
  const design = redrawn(withParts(start, random), random, probability);
  return random() < 0.85 ? laidOut(design, random) : design;
}

/** A number of valid designs, the same at every run, anywhere in the declared ranges. */
export function anyDesigns(count: number, seed = 31): Design[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => anyDesign(random));
}
