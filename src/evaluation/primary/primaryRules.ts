import { closestPitch } from "../../calc/coil/primary";
import { judgeWhen, type Rule } from "../findings/rule";

export const tapPastEnd: Rule = {
  code: "tap-past-end",
  severity: "error",
  sentence: "{field} at {value} lies past the end of the primary, which has {limit}.",
  judge: ({ primary }) =>
    judgeWhen(primary.tap > primary.turns, () => ({
      where: "primary.tap",
      quantity: "primary.tap",
      value: primary.tap,
      limit: primary.turns,
      remedy: "move the tap in or wind more turns",
    })),
};

export const tubeThickerThanPitch: Rule = {
  code: "primary-turns-touch",
  severity: "error",
  sentence: "{field} of {value} is not smaller than the pitch of {limit}: neighbouring turns touch.",
  judge: ({ primary }) =>
    judgeWhen(primary.turns > 1 && primary.tubeDiameter >= primary.pitch, () => ({
      where: "primary.tubeDiameter",
      quantity: "primary.tubeDiameter",
      value: primary.tubeDiameter,
      limit: primary.pitch,
      remedy: "widen the pitch or use thinner tube",
    })),
};

export const turnsAllButTouch: Rule = {
  code: "primary-turns-all-but-touch",
  severity: "error",
  sentence:
    "{field} of {value} leaves too little air between this many turns: current crowding cannot be computed below {limit}.",
  judge: ({ primary }) =>
    judgeWhen(
      primary.turns > 1 && primary.pitch > primary.tubeDiameter && primary.pitch < closestPitch(primary),
      () => ({
        where: "primary.pitch",
        quantity: "primary.pitch",
        value: primary.pitch,
        limit: closestPitch(primary),
        remedy: "widen the pitch, or use thinner tube or fewer turns",
      }),
    ),
};

export const wallThickerThanTube: Rule = {
  code: "wall-thicker-than-tube",
  severity: "error",
  sentence: "{field} of {value} is more than half the tube diameter, {limit}.",
  judge: ({ primary }) =>
    judgeWhen(primary.wallThickness > primary.tubeDiameter / 2, () => ({
      where: "primary.wallThickness",
      quantity: "primary.wallThickness",
      value: primary.wallThickness,
      limit: primary.tubeDiameter / 2,
      remedy: "enter the wall of the tube, or half its diameter for solid wire",
    })),
};

export const primaryInsideFormer: Rule = {
  code: "primary-inside-former",
  severity: "error",
  sentence:
    "{field} of {value} puts the primary's conductor inside the secondary; it must be larger than {limit}.",
  judge: ({ primary, secondary }) => {
    const needed = secondary.formerDiameter / 2 + secondary.wire.overallDiameter + primary.tubeDiameter / 2;
    return judgeWhen(primary.innerRadius <= needed, () => ({
      where: "primary.innerRadius",
      quantity: "primary.innerRadius",
      value: primary.innerRadius,
      limit: needed,
      remedy: "start the primary further out",
    }));
  },
};
