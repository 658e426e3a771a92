import { formatQuantity } from "../units/format";
import { useEvaluation, useUnitSystem } from "../workbench/hooks";
import styles from "./BuildSheet.module.css";

/** The primary's radius at each turn, for laying the tube out. */
export function TurnTable() {
  const turns = useEvaluation((evaluation) => evaluation.primary?.turnRadii ?? []);
  const system = useUnitSystem();
  const length = (value: number): string => formatQuantity(value, "length", system).text;
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
