import { resultEntry, resultValue } from "../../evaluation/register/register";
import { Figure } from "../../ui/Figure";
import { formatQuantity } from "../../units/format";
import { useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { Provenance } from "./Provenance";

interface ResultFigureProps {
  /** id of the result in the register */
  id: string;
  /** where the register's label is too long for the place */
  caption?: string;
  size?: "large" | "small";
  remark?: string;
  tone?: "plain" | "live" | "ok" | "warning" | "error";
}

/** One number of the evaluation as the register names it; a dash while it cannot be computed.
 * Pressed, it says where the number comes from. */
export function ResultFigure({ id, caption, ...figure }: ResultFigureProps) {
  const value = useEvaluation((evaluation) => resultValue(evaluation, id));
  const system = useUnitSystem();
  const entry = resultEntry(id);
  const shown = formatQuantity(value, entry.dimension, system);
  return (
    <Figure
      caption={caption ?? entry.label}
      number={value === null ? null : shown.number}
      unit={shown.unit}
      origin={{
        title: `${entry.label}, ${entry.symbol}`,
        content: ({ open, close }) => open && <Provenance entry={entry} close={close} />,
      }}
      {...figure}
    />
  );
}
