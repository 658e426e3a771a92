import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import { AimGroup } from "./AimGroup";

const results = ["tuning.targetResonance", "tuning.suggestedTap", "response.lowerPole", "response.upperPole"];

export function DrivePanel() {
  return (
    <Panel title="Drive">
      <AimGroup />
      <Results ids={results} />
      <Group title="Spark">
        <DesignField path="spark.length" />
        <DesignField path="spark.capacitancePerLength" />
        <DesignField path="spark.resistance" />
        <DesignField path="spark.topology" />
        <DesignField path="spark.growth" />
        <DesignField path="spark.growthRate" />
      </Group>
      <Group title="Bus and bridge">
        <DesignField path="drive.supply.arrangement" wide />
        <DesignField path="drive.supply.mainsVoltage" />
        <DesignField path="drive.supply.mainsFrequency" />
        <DesignField path="drive.supply.sourceResistance" />
        <DesignField path="drive.supply.sourceInductance" />
        <DesignField path="drive.supply.circuitCurrent" />
        <DesignField path="drive.bridge" />
        <DesignField path="drive.reservoirCapacitance" />
        <DesignField path="drive.reservoirSeriesResistance" />
        <DesignField path="drive.supply.prechargeResistance" />
        <DesignField path="drive.supply.dischargeResistance" />
      </Group>
      <Group title="Interrupter">
        <DesignField path="interrupter.onTime" />
        <DesignField path="interrupter.repetitionRate" />
        <DesignField path="interrupter.longestOnTime" />
        <DesignField path="interrupter.shortestGap" />
        <DesignField path="interrupter.dutyLimit" />
        <DesignField path="interrupter.dutyWindow" />
      </Group>
    </Panel>
  );
}
