import { cylinderGap } from "../../calc/coil/conductors";
import { closestPitch } from "../../calc/coil/primary";
import { judgeWhen, type Rule } from "../findings/rule";
import { areSolvable, PRIMARY_CIRCUIT } from "../solvable";

/** The field that moves a conductor. */
function fieldOf(path: string): string {
  if (path.startsWith("topLoad.elements.")) return `${path}.centreHeight`;
  if (path === "primary") return "primary.innerRadius";
  return path === "primary.strikeRail" ? "primary.strikeRail.radius" : path;
}

const NAMES: Record<string, string> = {
  secondary: "the winding",
  primary: "the primary",
  "primary.strikeRail": "the strike rail",
  ground: "the ground plane",
  axis: "itself across the axis",
};

function nameOf(path: string): string {
  return NAMES[path] ?? `element ${Number(path.split(".")[2]) + 1} of the top load`;
}

/** A toroid without a hole is wrong in its dimensions, not in its position. */
function isToroidItself({ path, other }: { path: string; other: string }): boolean {
  return other === "axis" && path.startsWith("topLoad.elements.");
}

export const toroidWithoutHole: Rule = {
  code: "toroid-without-hole",
  severity: "error",
  sentence:
    "{field} of {value} is not more than twice the tube diameter, {limit}: the toroid has no hole, so the field cannot be solved.",
  judge: (design, _evaluation, { conductors }) =>
    conductors.crossings.filter(isToroidItself).flatMap(({ path }) => {
      const element = design.topLoad.elements[Number(path.split(".")[2])];
      if (element.shape !== "toroid") return [];
      const where = `${path}.outerDiameter`;
      const { outerDiameter: value, tubeDiameter } = element;
      const remedy = "widen it, or use a thinner tube";
      return [{ where, quantity: where, value, limit: 2 * tubeDiameter, remedy }];
    }),
};

export const conductorsCross: Rule = {
  code: "conductors-cross",
  severity: "error",
  sentence: "{field}: this conductor overlaps another by {value}, so the field cannot be solved.",
  judge: (_design, _evaluation, { conductors }) =>
    conductors.crossings
      .filter((crossing) => !isToroidItself(crossing))
      .map(({ path, other, gap }) => ({
        where: fieldOf(path),
        quantity: fieldOf(path),
        value: -gap,
        limit: 0,
        remedy: `move it clear of ${nameOf(other)}`,
      })),
};

const WINDING = ["secondary", "topLoad", "primary", "room", "corrections", "spark"];

export const secondaryNotSolved: Rule = {
  code: "secondary-not-solved",
  severity: "error",
  sentence: "With the {field} at {value} and the conductors as placed, the secondary has no solution.",
  judge: (design, { secondary }, { conductors: { coil, crossings } }) => {
    const explained =
      coil === null ||
      crossings.length > 0 ||
      design.secondary.wire.conductorDiameter * design.secondary.turns >= design.secondary.windingLength;
    return judgeWhen(secondary === null && !explained && areSolvable(design, WINDING), () => ({
      where: "secondary.windingLength",
      quantity: "secondary.windingLength",
      value: design.secondary.windingLength,
      limit: null,
      remedy: "leave more air between winding, top load and primary",
    }));
  },
};

export const primaryNotSolved: Rule = {
  code: "primary-not-solved",
  severity: "error",
  sentence: "With the {field} at {value}, the primary has no solution.",
  judge: (design, evaluation) => {
    const { primary } = design;
    const explained =
      primary.tap > primary.turns || (primary.turns > 1 && primary.pitch < closestPitch(primary));
    const solvable = areSolvable(design, ["primary", ...PRIMARY_CIRCUIT]);
    return judgeWhen(evaluation.primary === null && !explained && solvable, () => ({
      where: "primary.turns",
      quantity: "primary.turns",
      value: primary.turns,
      limit: null,
      remedy: "check turns, pitch, inclination and inner radius",
    }));
  },
};

/** Share of the winding length; closer conductors concentrate its charge more than the charge functions resolve. */
const CLOSE = 0.01;

export const closeToWinding: Rule = {
  code: "conductor-close-to-winding",
  severity: "warning",
  sentence:
    "{field}: this conductor leaves {value} of air to the winding; below {limit} it flashes over, and the computed resonance may be off by 1 %.",
  judge: (_design, _evaluation, { conductors: { coil, crossings } }) => {
    if (!coil || crossings.length > 0) return [];
    const limit = CLOSE * coil.winding.length;
    const nearest = new Map<string, number>();
    for (const round of [...coil.topLoad, ...coil.primary, ...(coil.rail ? [coil.rail] : [])]) {
      const gap = cylinderGap(round, coil.winding);
      nearest.set(round.path, Math.min(gap, nearest.get(round.path) ?? gap));
    }
    return [...nearest]
      .filter(([, gap]) => gap < limit)
      .map(([path, gap]) => ({
        where: fieldOf(path),
        quantity: fieldOf(path),
        value: gap,
        limit,
        remedy: "leave more air between it and the winding",
      }));
  },
};
