import type { Design } from "../../design/design";
import type { Judged } from "../evaluation";
import { resultValue } from "../register/register";
import { judgeWhen, type Rule } from "./rule";

interface Bound {
  /** id of the result that is judged */
  quantity: string;
  /** null for no limit */
  limit: (design: Design, evaluation: Judged) => number | null;
  /** field to change */
  where: string;
  remedy: string;
}

/** Judges a result that is above its limit; says nothing while the result is unknown. */
export function above({ quantity, limit, where, remedy }: Bound): Rule["judge"] {
  return (design, evaluation) => {
    const value = resultValue(evaluation, quantity);
    const most = limit(design, evaluation);
    return judgeWhen(value !== null && most !== null && value > most, () => ({
      where,
      quantity,
      value,
      limit: most,
      remedy,
    }));
  };
}
