import type { NumberField } from "../../fields/field";
import type { Remark } from "../../ui/Cell";
import { QuantityField } from "../../ui/QuantityField";
import type { UnitSystem } from "../../units/unitSystem";
import { useUnitSystem } from "../../workbench/session/hooks";
import { meaningRefusal, rangeText, typedText } from "../parts/meaning";
import { placeInShow } from "../parts/places";

function rangeRemarks(field: NumberField, value: number, system: UnitSystem): Remark[] {
  const { range, label } = field;
  if (value >= range.minimum && value <= range.maximum) return [];
  const text = typedText(value, field, system);
  const sentence = `${label} of ${text} is outside the usual ${rangeText(field, system)}: check it.`;
  return [{ severity: "warning", sentence }];
}

interface ScoreQuantityProps {
  field: NumberField;
  value: number;
  /** `run` is given if an arrow key changed the value */
  onCommit: (value: number, run?: string) => void;
  /** dotted path in the show, if the declaration's path is a pattern */
  path?: string;
  /** replaces the declaration's label, if that is ambiguous */
  label?: string;
  /** without help, for a field that is repeated in a table */
  bare?: boolean;
}

/** One number of the score with unit, range and help from its declaration. */
export function ScoreQuantity(props: ScoreQuantityProps) {
  const { field, value, onCommit, path = field.path, label = field.label, bare } = props;
  const system = useUnitSystem();
  return (
    <QuantityField
      label={label}
      help={bare ? undefined : field.help}
      range={rangeText(field, system)}
      remarks={rangeRemarks(field, value, system)}
      value={value}
      usual={field.default}
      dimension={field.dimension}
      system={system}
      whole={field.meaning.whole}
      refuse={(typed) => meaningRefusal(field, typed, system)}
      place={placeInShow(path)}
      onCommit={(next, run) => next !== null && onCommit(next, run)}
    />
  );
}
