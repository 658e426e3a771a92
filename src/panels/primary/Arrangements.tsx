import type { Arrangement } from "../../calc/circuit/bank";
import { Button } from "../../ui/Button";
import { formatQuantity } from "../../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import styles from "./Arrangements.module.css";

/** The smallest of the three margins, and of which limit; null if the bank has no stress. */
function tightest({ stress }: Arrangement): { margin: number; of: string } | null {
  const margins = [
    { margin: stress.voltageMargin, of: "voltage" },
    { margin: stress.peakCurrentMargin, of: "peak current" },
    { margin: stress.rmsCurrentMargin, of: "RMS current" },
  ];
  return margins.reduce<{ margin: number; of: string } | null>(
    (least, { margin, of }) =>
      margin !== null && (least === null || margin < least.margin) ? { margin, of } : least,
    null,
  );
}

function apply({ unitsInSeries, strings }: Arrangement): void {
  workbench.edit("use the proposed bank", (design) => ({
    ...design,
    tank: { ...design.tank, unitsInSeries, strings },
  }));
}

function Row({
  arrangement,
  present,
  priced,
}: {
  arrangement: Arrangement;
  present: boolean;
  priced: boolean;
}) {
  const system = useUnitSystem();
  const { unitsInSeries, strings, units, capacitance, deviation, cost } = arrangement;
  const least = tightest(arrangement);
  const name = `${unitsInSeries} × ${strings}`;
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{units}</td>
      <td title={`${formatQuantity(deviation, "percent", system, 2).text} off the wanted capacitance`}>
        {formatQuantity(capacitance, "capacitance", system, 3).text}
      </td>
      <td>
        {formatQuantity(least?.margin ?? null, "ratio", system, 3).text}
        {least && <small className={styles.of}>{least.of}</small>}
      </td>
      {priced && <td>{cost === null ? "–" : formatQuantity(cost, "ratio", system, 4).text}</td>}
      <td>
        <Button
          kind="bare"
          disabled={present}
          aria-label={present ? `${name}, the present bank` : `Use ${name}`}
          onClick={() => apply(arrangement)}
        >
          {present ? "present" : "Use"}
        </Button>
      </td>
    </tr>
  );
}

/** Banks of the given unit that make the wanted capacitance with sufficient margins, fewest units first. */
export function Arrangements() {
  const { unitsInSeries, strings } = useDesign((design) => design.tank);
  const arrangements = useEvaluation(({ tank }) => tank?.arrangements ?? []);
  const priced = arrangements.some(({ cost }) => cost !== null);
  if (arrangements.length === 0)
    return (
      <p className={styles.none}>
        No arrangement of this unit is within 5 % of the wanted capacitance with a margin of 1.2 to every
        limit.
      </p>
    );
  return (
    <table className={styles.arrangements}>
      <caption className="visually-hidden">Proposed arrangements</caption>
      <thead>
        <tr>
          <th scope="col">series × strings</th>
          <th scope="col">units</th>
          <th scope="col">bank</th>
          <th scope="col">least margin</th>
          {priced && <th scope="col">price</th>}
          <th scope="col">
            <span className="visually-hidden">use</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {arrangements.map((arrangement) => (
          <Row
            key={`${arrangement.unitsInSeries} × ${arrangement.strings}`}
            arrangement={arrangement}
            present={arrangement.unitsInSeries === unitsInSeries && arrangement.strings === strings}
            priced={priced}
          />
        ))}
      </tbody>
    </table>
  );
}
