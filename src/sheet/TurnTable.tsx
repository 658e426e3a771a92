import type { TurnPlace as TurnRadius } from "../calc/coil/primaryGeometry";
import { formatQuantity } from "../units/format";
import { useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import { Block } from "./Block";
import styles from "./BuildSheet.module.css";
import { listedTurns, turnColumns } from "./turnList";

/** One unit for all rows, given in the heading, however large the coil. */
const LENGTH = "smallLength";

function TurnColumn({ turns }: { turns: readonly TurnRadius[] }) {
  const system = useUnitSystem();
  const length = (value: number): string => formatQuantity(value, LENGTH, system).number;
  return (
    <table className={styles.turns}>
      <thead>
        <tr>
          <th scope="col">Turn</th>
          <th scope="col">Radius</th>
          <th scope="col">Height</th>
        </tr>
      </thead>
      <tbody>
        {turns.map(({ turn, radius, height }) => (
          <tr key={turn}>
            <th scope="row">{Number(turn.toFixed(2))}</th>
            <td>{length(radius)}</td>
            <td>{length(height)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The primary's radius at each turn, for laying out the tube; in columns, so that the sheet stays one page. */
export function TurnTable() {
  const turns = useEvaluation((evaluation) => evaluation.primary?.turnRadii ?? []);
  const { unit } = formatQuantity(1, LENGTH, useUnitSystem());
  const { listed, step } = listedTurns(turns);
  return (
    <Block title={`Primary, radius at each turn (${unit})`}>
      <div className={styles.turnColumns}>
        {turnColumns(listed).map((column) => (
          <TurnColumn key={column[0].turn} turns={column} />
        ))}
      </div>
      {step > 1 && <p>One turn in {step} is listed; radius and height increase linearly between them.</p>}
    </Block>
  );
}
