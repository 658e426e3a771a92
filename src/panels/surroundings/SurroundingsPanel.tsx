import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import { CorrectionSwitch } from "./CorrectionSwitch";

export function SurroundingsPanel() {
  return (
    <Panel title="Room and model">
      <Group title="Room">
        <DesignField path="room.ceilingHeight" />
        <DesignField path="room.ceilingConducts" />
        <DesignField path="room.wallDistance" />
        <DesignField path="room.wallConducts" />
        <DesignField path="room.audienceDistance" wide />
      </Group>
      <Group title="Air">
        <DesignField path="air.temperature" />
        <DesignField path="air.pressure" />
      </Group>
      <Group title="Corrections of the model">
        <CorrectionSwitch name="former" shift="corrections.formerShift" />
        <CorrectionSwitch name="floorConducts" shift="corrections.floorShift" />
        <CorrectionSwitch name="wireCurrent" shift="corrections.wireCurrentShift" />
        <DesignField path="corrections.lossAllowance" />
      </Group>
    </Panel>
  );
}
