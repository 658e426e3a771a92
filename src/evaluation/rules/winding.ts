import { judgeWhen, type Rule } from "./rule";

/** V/m between heights on the winding in air; common practice, no source. */
const GRADIENT_LIMIT = 1e6;

export const gradientHigh: Rule = {
  code: "gradient-along-winding-high",
  severity: "warning",
  sentence: "{field} of {value} is above {limit}, where a winding flashes over (common practice).",
  judge: (_, { secondary }) =>
    judgeWhen((secondary?.maximumGradient ?? 0) > GRADIENT_LIMIT, () => ({
      where: "secondary.windingLength",
      quantity: "secondary.maximumGradient",
      value: secondary?.maximumGradient ?? null,
      limit: GRADIENT_LIMIT,
      remedy: "take a longer winding, or a breakout point that opens earlier",
    })),
};
