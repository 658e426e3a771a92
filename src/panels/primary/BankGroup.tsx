import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Results } from "../parts/Results";
import { Arrangements } from "./Arrangements";

const BANK = ["tank.capacitance", "tank.peakVoltageRating", "tank.units", "tank.characteristicImpedance"];

const STRESS = [
  "tank.unitPeakVoltage",
  "tank.voltageMargin",
  "tank.unitPeakCurrent",
  "tank.peakCurrentMargin",
  "tank.unitRmsCurrent",
  "tank.rmsCurrentMargin",
  "tank.unitRmsVoltage",
  "tank.loss",
];

/** The capacitor bank: its units, their stress in the burst, and suitable arrangements. */
export function BankGroup() {
  return (
    <>
      <Group title="Capacitor bank">
        <DesignField path="tank.unitsInSeries" />
        <DesignField path="tank.strings" />
        <DesignField path="tank.unit.capacitance" />
        <DesignField path="tank.unit.dcVoltage" />
        <DesignField path="tank.unit.peakCurrent" />
        <DesignField path="tank.unit.rmsCurrent" />
        <DesignField path="tank.unit.dissipationFactor" wide />
      </Group>
      <Results ids={BANK} />
      <Results ids={STRESS} />
      <Group title="Arrangements of this unit">
        <DesignField path="tank.wantedCapacitance" />
        <DesignField path="tank.unitCost" />
      </Group>
      <Arrangements />
    </>
  );
}
