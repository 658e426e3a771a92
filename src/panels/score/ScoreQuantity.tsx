import type { ScoreField } from "../../design/fields/score";
import type { Remark } from "../../ui/Cell";
import { QuantityField } from "../../ui/QuantityField";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";
import { useUnitSystem } from "../../workbench/session/hooks";
import { meaningRefusal } from "../parts/meaning";
import { placeInShow } from "../parts/places";

const rangeDigits = 7;

function spanText({ minimum, maximum }: ScoreField["range"], field: ScoreField, system: UnitSystem): string {
  const text = (limit: number) => formatQuantity(limit, field.dimension, system, rangeDigits).text;
  return `${text(minimum)} to ${text(maximum)}`;
}

/** A number as it was typed; where that takes an exponent, as it is printed. */
function valueText(value: number, { dimension }: ScoreField, system: UnitSystem): string {
  const typed = formatQuantity(value, dimension, system, rangeDigits);
  return typed.number.includes("e") ? formatQuantity(value, dimension, system).text : typed.text;
}

/** Why a number can be no value of a field of the score, in one sentence; null where it can. */
export function scoreRefusal(field: ScoreField, value: number, system: UnitSystem): string | null {
  const { limits, whole, label } = field;
  const meaning = meaningRefusal(field, value, system);
  if (meaning) return meaning;
  const text = valueText(value, field, system);
  if (whole && !Number.isInteger(value))
    return `${label} must be a whole number, and ${text} is not: change the figure.`;
  if (value >= limits.minimum && value <= limits.maximum) return null;
  return `${label} must lie in ${spanText(limits, field, system)}, and ${text} does not: change the figure.`;
}

function rangeRemarks(field: ScoreField, value: number, system: UnitSystem): Remark[] {
  const { range, label } = field;
  if (value >= range.minimum && value <= range.maximum) return [];
  const text = valueText(value, field, system);
  const sentence = `${label} of ${text} lies outside the usual ${spanText(range, field, system)}: check it.`;
  return [{ severity: "warning", sentence }];
}

interface ScoreQuantityProps {
  field: ScoreField;
  value: number;
  /** `run` where an arrow key made the step */
  onCommit: (value: number, run?: string) => void;
  /** dotted path in the show, where the declaration's own stands for several */
  path?: string;
  /** where the label alone does not say whose number it is */
  label?: string;
  /** without help, where the same field stands many times */
  bare?: boolean;
}

/** One number of the score with all that its declaration says. */
export function ScoreQuantity(props: ScoreQuantityProps) {
  const { field, value, onCommit, path = field.path, label = field.label, bare } = props;
  const system = useUnitSystem();
  return (
    <QuantityField
      label={label}
      help={bare ? undefined : field.help}
      range={spanText(field.range, field, system)}
      remarks={rangeRemarks(field, value, system)}
      value={value}
      usual={field.default}
      dimension={field.dimension}
      system={system}
      whole={field.whole}
      refuse={(typed) => scoreRefusal(field, typed, system)}
      place={placeInShow(path)}
      onCommit={(next, run) => next !== null && onCommit(next, run)}
    />
  );
}
