import { useDesign } from "../../workbench/session/hooks";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import { CommutationGroup } from "./CommutationGroup";
import { CurrentLimitGroup } from "./CurrentLimitGroup";

/** The Foster elements of one device, junction to case, as its data sheet lists them. */
function FosterGroup() {
  const count = useDesign((design) => design.drive.switch.thermal.length);
  return (
    <Group title="Thermal impedance, junction to case (Foster)">
      {Array.from({ length: count }, (_, index) => `drive.switch.thermal.${index}`).flatMap((path) => [
        <DesignField key={`${path} resistance`} path={`${path}.resistance`} />,
        <DesignField key={`${path} time`} path={`${path}.timeConstant`} />,
      ])}
    </Group>
  );
}

const HEAT = [
  "drive.junctionTemperature",
  "drive.junctionMargin",
  "drive.meanJunctionTemperature",
  "drive.junctionRise",
  "drive.switchPower",
  "drive.conductionEnergy",
  "drive.switchPeakCurrent",
  "drive.turnOffCurrent",
];

const GATE = ["drive.gatePeakCurrent", "drive.gatePower"];

/** The switches, their commutation and the current limit. */
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
        <DesignField path="drive.switch.parallelDevices" />
        <DesignField path="drive.switch.caseTemperature" />
        <DesignField path="drive.switch.junctionLimit" wide />
      </Group>
      <FosterGroup />
      <Results ids={HEAT} />
      <Group title="Gate">
        <DesignField path="drive.switch.gateCharge" />
        <DesignField path="drive.switch.gateVoltage" />
        <DesignField path="drive.switch.gateResistance" wide />
      </Group>
      <Results ids={GATE} />
      <CommutationGroup />
      <CurrentLimitGroup />
    </Panel>
  );
}
