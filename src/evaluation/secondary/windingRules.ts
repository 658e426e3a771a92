import { judgeWhen, type Rule } from "../findings/rule";

export const windingTooShort: Rule = {
  code: "winding-shorter-than-its-turns",
  severity: "error",
  sentence: "{field} of {value} is shorter than its turns side by side, which need {limit}.",
  judge: ({ secondary }) => {
    const needed = secondary.turns * secondary.wire.overallDiameter;
    // close-wound coils are entered with rounded numbers
    return judgeWhen(secondary.windingLength < needed * (1 - 1e-3), () => ({
      where: "secondary.windingLength",
      quantity: "secondary.windingLength",
      value: secondary.windingLength,
      limit: needed,
      remedy: "use fewer turns, thinner wire or a longer winding",
    }));
  },
};

export const formerWallTooThick: Rule = {
  code: "former-wall-thicker-than-radius",
  severity: "error",
  sentence: "{field} of {value} is more than the former's radius, {limit}, which is used instead.",
  judge: ({ secondary: { formerWall, formerDiameter } }) =>
    judgeWhen(formerWall > formerDiameter / 2, () => ({
      where: "secondary.formerWall",
      quantity: "secondary.formerWall",
      value: formerWall,
      limit: formerDiameter / 2,
      remedy: "enter the wall of the tube that the wire is wound on",
    })),
};

export const enamelThinnerThanWire: Rule = {
  code: "overall-diameter-below-conductor",
  severity: "error",
  sentence: "{field} of {value} is below the bare conductor's {limit}.",
  judge: ({ secondary: { wire } }) =>
    judgeWhen(wire.overallDiameter < wire.conductorDiameter, () => ({
      where: "secondary.wire.overallDiameter",
      quantity: "secondary.wire.overallDiameter",
      value: wire.overallDiameter,
      limit: wire.conductorDiameter,
      remedy: "enter the diameter over the enamel, as measured with a micrometer",
    })),
};
