import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import { StockWireField } from "./StockWireField";

const results = [
  "secondary.inductance",
  "secondary.pitch",
  "secondary.bareResonance",
  "secondary.resonance",
  "secondary.effectiveInductance",
  "secondary.effectiveCapacitance",
  "secondary.wireLength",
  "secondary.wireMass",
  "secondary.dcResistance",
  "secondary.acResistance",
  "secondary.qualityFactor",
  "secondary.maximumGradient",
];

export function SecondaryPanel() {
  return (
    <Panel title="Secondary" open>
      <Group title="Winding">
        <DesignField path="secondary.turns" />
        <DesignField path="secondary.windingLength" />
        <DesignField path="secondary.formerDiameter" />
        <DesignField path="secondary.baseHeight" />
      </Group>
      <Group title="Wire">
        <StockWireField />
        <DesignField path="secondary.wire.conductorDiameter" />
        <DesignField path="secondary.wire.overallDiameter" />
        <DesignField path="secondary.wire.material" />
        <DesignField path="secondary.windingTemperature" />
      </Group>
      <Group title="Former">
        <DesignField path="secondary.formerWall" />
        <DesignField path="secondary.formerPermittivity" />
      </Group>
      <Group title="Measured on the coil">
        <DesignField path="secondary.measuredResonance" />
        <DesignField path="secondary.measuredQ" />
      </Group>
      <Results ids={results} />
    </Panel>
  );
}
