/** Clearances to the simulated spark; local rules decide what must be kept clear. */
import type { Design } from "../../design/design";
import { judgeWhen, type Rule, unlessFound } from "../findings/rule";
import type { Conductors } from "../secondary/fieldStages";

/** m, from ground and axis to the farthest point of top load and breakout point; null without a coil. */
function reachOf(design: Design, { coil }: Conductors): { height: number; radius: number } | null {
  if (!coil) return null;
  const point = design.topLoad.breakoutPoint?.length ?? 0;
  const { winding, topLoad } = coil;
  return {
    height: Math.max(
      winding.lowerEnd + winding.length,
      ...topLoad.map((each) => each.centreHeight + each.sectionRadius),
    ),
    radius:
      point + Math.max(winding.radius, ...topLoad.map((each) => each.centreRadius + each.sectionRadius)),
  };
}

type Place = "ceilingHeight" | "wallDistance" | "audienceDistance";

/** m of air between top load and a boundary of the room; null if the room has none. */
function airTo(design: Design, conductors: Conductors, place: Place): number | null {
  const reach = reachOf(design, conductors);
  const distance = design.room[place];
  if (!reach || distance === null) return null;
  return distance - (place === "ceilingHeight" ? reach.height : reach.radius);
}

/** Judges whether the air is less than a multiple of the spark length. */
function within(place: Place, sparks: number, remedy: string): Rule["judge"] {
  return (design, _evaluation, { conductors }) => {
    const air = airTo(design, conductors, place);
    const limit = sparks * design.spark.length;
    return judgeWhen(air !== null && limit > 0 && air < limit, () => ({
      where: `room.${place}`,
      quantity: `room.${place}`,
      value: air,
      limit,
      remedy,
    }));
  };
}

/** Usual clearance in spark lengths; common practice, no source. */
const TO_STRUCTURES = 1.5;
const TO_PEOPLE = 3;

export const audienceInReach: Rule = {
  code: "audience-within-spark",
  severity: "error",
  sentence: "{field}: people stand {value} from the top load's edge, within reach of the {limit} spark.",
  judge: within("audienceDistance", 1, "keep everyone far beyond the spark, behind a barrier"),
};

export const audienceNear: Rule = {
  code: "audience-near-spark",
  severity: "warning",
  sentence:
    "{field}: people stand {value} from the top load's edge, closer than {limit}, three times the spark length (common practice).",
  judge: unlessFound(
    audienceInReach,
    within("audienceDistance", TO_PEOPLE, "move the barrier out; local rules may ask for more"),
  ),
};

export const ceilingNear: Rule = {
  code: "ceiling-near-spark",
  severity: "warning",
  sentence:
    "{field}: {value} of air between top load and ceiling is less than {limit}, 1.5 times the spark length (common practice).",
  judge: within("ceilingHeight", TO_STRUCTURES, "lower the coil, or make shorter sparks"),
};

export const wallNear: Rule = {
  code: "wall-near-spark",
  severity: "warning",
  sentence:
    "{field}: {value} of air between top load and wall is less than {limit}, 1.5 times the spark length (common practice).",
  judge: within("wallDistance", TO_STRUCTURES, "move the coil away from the wall, or make shorter sparks"),
};
