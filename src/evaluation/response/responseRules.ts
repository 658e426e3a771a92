import { type Judgement, judgeWhen, type Rule } from "../findings/rule";
import { areSolvable } from "../solvable";

/** Quality factor below which a circuit by itself creeps back instead of ringing. */
const RINGS = 1;

export const noPoles: Rule = {
  code: "circuit-does-not-ring",
  severity: "error",
  sentence:
    "With {field} of {value} a circuit is damped so heavily that it does not ring: there are no two poles, and no response.",
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
          ? "look for the resistance in bank, switches and tube that is too much"
          : "check resistance, topology and length of the spark",
      }),
    );
  },
};
