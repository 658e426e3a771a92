import { useDesign } from "../../workbench/session/hooks";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";

/** The current transformer; its turns are one number, or two for two in cascade. */
export function TransformerGroup() {
  const count = useDesign((design) => design.drive.currentTransformer.turns.length);
  return (
    <Group title="Current transformer">
      {Array.from({ length: count }, (_, index) => (
        <DesignField key={index} path={`drive.currentTransformer.turns.${index}`} wide={count === 1} />
      ))}
      <DesignField path="drive.currentTransformer.burden" />
      <DesignField path="drive.currentTransformer.comparatorVoltage" />
      <DesignField path="drive.currentTransformer.coreArea" />
      <DesignField path="drive.currentTransformer.saturationFluxDensity" />
    </Group>
  );
}
