import { useDesign } from "../../workbench/session/hooks";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { OptionalGroup } from "../parts/OptionalGroup";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import { AddElement } from "./AddElement";
import { ElementGroup } from "./ElementGroup";

const results = [
  "topLoad.capacitance",
  "topLoad.breakoutVoltage",
  "topLoad.breakoutVoltageAtPoint.typical",
  "topLoad.surfaceFieldPerVolt",
  "topLoad.outerDiameter",
  "topLoad.height",
  "topLoad.surfaceArea",
  "topLoad.mass",
];

export function TopLoadPanel() {
  const count = useDesign((design) => design.topLoad.elements.length);
  return (
    <Panel title="Top load">
      {Array.from({ length: count }, (_, index) => (
        <ElementGroup key={index} index={index} count={count} />
      ))}
      <AddElement />
      <OptionalGroup
        path="topLoad.breakoutPoint"
        name="breakout point"
        title="Breakout point"
        fields={["length", "tipRadius"]}
      />
      <Group title="Surface">
        <DesignField path="topLoad.surfaceFactor" wide />
      </Group>
      <Results ids={results} />
    </Panel>
  );
}
