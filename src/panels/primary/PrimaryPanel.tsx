import { primaryFields } from "../../fields/primaryFields";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { OptionalGroup } from "../parts/OptionalGroup";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import { BankGroup } from "./BankGroup";

const primaryResults = [
  "primary.inductance",
  "primary.resonance",
  "primary.lowFrequencyInductance",
  "primary.fullInductance",
  "primary.conductorLength",
  "primary.fullConductorLength",
  "primary.acResistance",
  "primary.qualityFactor",
  "primary.freeEndVoltage",
];

export function PrimaryPanel() {
  return (
    <Panel title="Primary and tank">
      <Group title="Spiral">
        <DesignField path="primary.turns" />
        <DesignField path="primary.tap" />
        <DesignField path="primary.innerRadius" />
        <DesignField path="primary.pitch" />
        <DesignField path="primary.inclinationDegrees" />
        <DesignField path="primary.baseHeight" />
      </Group>
      <Group title="Conductor and leads">
        <DesignField path="primary.tubeDiameter" />
        <DesignField path="primary.wallThickness" />
        <DesignField path="primary.leadInductance" wide />
      </Group>
      <OptionalGroup
        path="primary.strikeRail"
        declaration={primaryFields.parts.strikeRail}
        name="strike rail"
        title="Strike rail"
        fields={["radius", "height", "tubeDiameter"]}
      />
      <Results ids={primaryResults} />
      <BankGroup />
    </Panel>
  );
}
