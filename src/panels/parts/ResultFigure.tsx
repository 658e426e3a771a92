import { resultEntry, resultValue } from "../../evaluation/register/register";
import { Figure } from "../../ui/Figure";
import { formatQuantity } from "../../units/format";
import { useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { Provenance } from "./Provenance";

interface ResultFigureProps {
  /** id of the result in the register */
  id: string;
  /** replaces the register's label where that is too long */
  caption?: string;
  size?: "large" | "small";
  remark?: string;
  tone?: "plain" | "live" | "ok" | "warning" | "error";
}

/**
 * One result with its label from the register; a dash while it cannot be computed. Pressing it opens its
 * provenance.
 */
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
