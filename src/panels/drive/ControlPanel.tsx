import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import { FosterGroup } from "./FosterGroup";
import { TransformerGroup } from "./TransformerGroup";

/** The switches, what commutates them and what stops them. */
export function ControlPanel() {
  return (
    <Panel title="Switches and control">
      <Group title="Switch">
        <DesignField path="drive.switch.voltageRating" />
        <DesignField path="drive.switch.pulseCurrentRating" />
        <DesignField path="drive.switch.onStateVoltage" />
        <DesignField path="drive.switch.onStateResistance" />
        <DesignField path="drive.switch.turnOffEnergyPerAmpere" />
        <DesignField path="drive.switch.turnOffTestVoltage" />
        <DesignField path="drive.switch.gateCharge" />
        <DesignField path="drive.switch.gateVoltage" />
        <DesignField path="drive.switch.gateResistance" />
        <DesignField path="drive.switch.parallelDevices" />
        <DesignField path="drive.switch.caseTemperature" />
        <DesignField path="drive.switch.junctionLimit" />
      </Group>
      <FosterGroup />
      <Group title="Commutation">
        <DesignField path="drive.commutation.mode" />
        <DesignField path="drive.commutation.frequency" />
        <DesignField path="drive.commutation.leadTime" />
        <DesignField path="drive.commutation.delay" />
        <DesignField path="drive.commutation.deadTime" wide />
      </Group>
      <Group title="Over-current">
        <DesignField path="drive.overCurrentLimit" />
        <DesignField path="drive.overCurrentAction" />
      </Group>
      <TransformerGroup />
    </Panel>
  );
}
