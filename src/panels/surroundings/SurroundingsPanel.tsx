import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";

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
        <DesignField path="corrections.former" />
        <DesignField path="corrections.floorConducts" />
        <DesignField path="corrections.wireCurrent" />
        <DesignField path="corrections.lossAllowance" />
      </Group>
    </Panel>
  );
}
