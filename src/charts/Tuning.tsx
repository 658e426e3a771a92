import { useState } from "react";
import { ChoiceField } from "../ui/ChoiceField";
import { Contained } from "../ui/Contained";
import type { SweepName } from "../workbench/background/sweepVariables";
import { EnergySweepChart } from "./EnergySweepChart";
import { SweepChart } from "./SweepChart";
import { TuningChart } from "./TuningChart";

const SWEPT: Readonly<Record<string, SweepName>> = {
  "bank capacitance": "bank",
  "toroid's outer diameter": "toroid",
  "spark length": "spark",
};
const ENERGY = "tap, energy into the spark";
const ABSCISSAE = ["tap", ENERGY, ...Object.keys(SWEPT)];

function chartOf(abscissa: string) {
  if (abscissa === ENERGY) return <EnergySweepChart />;
  const swept = SWEPT[abscissa];
  return swept ? <SweepChart name={swept} /> : <TuningChart />;
}

/** The tuning against the tap or another quantity of choice. */
export function Tuning() {
  const [abscissa, setAbscissa] = useState("tap");
  return (
    <>
      <ChoiceField label="Tuning against" options={ABSCISSAE} value={abscissa} onCommit={setAbscissa} />
      <Contained key={abscissa} what={`chart against ${abscissa}`}>
        {chartOf(abscissa)}
      </Contained>
    </>
  );
}
