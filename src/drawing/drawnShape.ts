/** A design as it can be drawn: sizes far outside a field's declared range are limited for the drawing. */
import type { TopLoad } from "../calc/design-parts";
import { fieldValues, withValueAt } from "../design/changeAt";
import { allFields } from "../fields/allFields";
import type { NumberField } from "../fields/field";
import { hasMeaning } from "../fields/meaning";
import type { Dimension } from "../units/dimension";
import type { CoilShape } from "./coilShape";

export interface Drawn {
  /** with every size finite and near realistic ones */
  shape: CoilShape;
  /** labels of the fields whose sizes are not drawn to scale */
  notToScale: readonly string[];
}

/** Factors beyond its declared range up to which a size is drawn to scale. */
const LARGER = 3;
const SMALLER = 20;

const SIZES: readonly Dimension[] = ["length", "smallLength", "wireDiameter", "turns", "degrees"];
const PARTS: readonly string[] = ["secondary.", "topLoad.", "primary."];

function isSize(field: (typeof allFields)[number]): field is NumberField {
  return (
    field.kind === "number" &&
    SIZES.includes(field.dimension) &&
    PARTS.some((part) => field.path.startsWith(part))
  );
}

const SIZE_FIELDS = allFields.filter(isSize);

function drawable({ range, meaning }: NumberField, value: number): number {
  const least = hasMeaning(meaning, 0) ? 0 : range.minimum / SMALLER;
  return Math.min(Math.max(value, least), range.maximum * LARGER);
}

/** A part of a design with every size limited to what can be drawn; the same object if none exceeds it. */
function limited<Part extends object>(part: Part): { drawn: Part; notToScale: readonly string[] } {
  let drawn = part;
  const notToScale = new Set<string>();
  for (const field of SIZE_FIELDS) {
    for (const { path, value } of fieldValues(part, field.path)) {
      if (typeof value !== "number" || drawable(field, value) === value) continue;
      drawn = withValueAt(drawn, path, drawable(field, value));
      notToScale.add(field.label.toLowerCase());
    }
  }
  return { drawn, notToScale: [...notToScale] };
}

/** The coil as drawn. */
export function drawnShape(shape: CoilShape): Drawn {
  const { drawn, notToScale } = limited(shape);
  return { shape: drawn, notToScale };
}

/** The top load alone, as drawn. */
export function drawnTopLoad(topLoad: TopLoad): TopLoad {
  return limited({ topLoad }).drawn.topLoad;
}
