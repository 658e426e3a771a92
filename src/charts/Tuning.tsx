import { useState } from "react";
import { ChoiceField } from "../ui/ChoiceField";
import type { SweepName } from "../workbench/sweepVariables";
import { SweepChart } from "./SweepChart";
import { TuningChart } from "./TuningChart";

const SWEPT: Readonly<Record<string, SweepName>> = {
  "bank capacitance": "bank",
  "toroid's outer diameter": "toroid",
  "spark length": "spark",
};
const ABSCISSAE = ["tap", ...Object.keys(SWEPT)];

/** The tuning against the tap or, by a choice, against something else that is easily changed. */
export function Tuning() {
  const [abscissa, setAbscissa] = useState("tap");
  const swept = SWEPT[abscissa];
  return (
    <>
      <ChoiceField label="Tuning against" options={ABSCISSAE} value={abscissa} onCommit={setAbscissa} />
      {swept ? <SweepChart name={swept} /> : <TuningChart />}
    </>
  );
}
