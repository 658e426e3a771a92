import { type Judgement, judgeWhen, type Rule } from "../findings/rule";
import { areSolvable } from "../solvable";

/** Quality factor below which a circuit on its own does not ring. */
const RINGS = 1;

export const noPoles: Rule = {
  code: "circuit-does-not-ring",
  severity: "error",
  sentence:
    "With the {field} at {value}, a circuit is damped so heavily that it does not ring: the two poles and the response do not exist.",
  judge: (design, { primary, coupling, response }) => {
    const expected = primary !== null && coupling !== null && areSolvable(design, ["spark"]);
    const damped = (primary?.qualityFactor ?? RINGS) < RINGS;
    const path = damped ? "primary.qualityFactor" : "spark.resistance";
    return judgeWhen(
      expected && response === null,
      (): Judgement => ({
        where: damped ? "tank.unit.dissipationFactor" : "spark.resistance",
        quantity: path,
        value: damped ? (primary?.qualityFactor ?? null) : design.spark.resistance,
        limit: null,
        remedy: damped
          ? "look for excessive resistance in bank, switches and tube"
          : "check resistance, topology and length of the spark",
      }),
    );
  },
};
