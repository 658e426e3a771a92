import type { TopLoad, TopLoadElement } from "../../calc/design-parts";
import { Button } from "../../ui/Button";
import { useDesign } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { newSphere, newToroid } from "./elements";
import styles from "./topLoad.module.css";

export function AddElement() {
  const topLoad = useDesign((design) => design.topLoad);
  const windingTop = useDesign((design) => design.secondary.baseHeight + design.secondary.windingLength);
  const add = (label: string, make: (topLoad: TopLoad, windingTop: number) => TopLoadElement) =>
    workbench.setValue("topLoad.elements", [...topLoad.elements, make(topLoad, windingTop)], label);
  return (
    <div className={styles.add}>
      {topLoad.elements.length === 0 && <p>No top load: the winding stands bare.</p>}
      <Button icon="plus" onClick={() => add("add toroid", newToroid)}>
        Toroid
      </Button>
      <Button icon="plus" onClick={() => add("add sphere", newSphere)}>
        Sphere
      </Button>
    </div>
  );
}
