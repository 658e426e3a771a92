import type { TopLoad, TopLoadElement } from "../../calc/design-parts";
import { topLoadFields } from "../../fields/topLoadFields";
import { Button } from "../../ui/Button";
import { useDesign } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { OptionalGroup } from "../parts/OptionalGroup";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import { ElementGroup } from "./ElementGroup";
import { newSphere, newToroid } from "./elements";
import styles from "./topLoad.module.css";

function AddElement() {
  const topLoad = useDesign((design) => design.topLoad);
  const windingTop = useDesign((design) => design.secondary.baseHeight + design.secondary.windingLength);
  const add = (label: string, make: (topLoad: TopLoad, windingTop: number) => TopLoadElement) =>
    workbench.setValue("topLoad.elements", [...topLoad.elements, make(topLoad, windingTop)], label);
  return (
    <div className={styles.add}>
      {topLoad.elements.length === 0 && <p>No top load: only the bare winding.</p>}
      <Button icon="plus" onClick={() => add("add toroid", newToroid)}>
        Toroid
      </Button>
      <Button icon="plus" onClick={() => add("add sphere", newSphere)}>
        Sphere
      </Button>
    </div>
  );
}

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
        declaration={topLoadFields.parts.breakoutPoint}
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
