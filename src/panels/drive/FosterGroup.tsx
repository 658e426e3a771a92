import { useDesign } from "../../workbench/session/hooks";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";

/** The Foster elements of one device, junction to case, as its data sheet lists them. */
export function FosterGroup() {
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
