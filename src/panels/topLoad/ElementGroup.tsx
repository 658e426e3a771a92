import { Button } from "../../ui/Button";
import { useDesign } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { moved } from "./elements";
import styles from "./topLoad.module.css";

const fieldsOf = {
  toroid: ["outerDiameter", "tubeDiameter", "centreHeight"],
  sphere: ["diameter", "centreHeight"],
} as const;

const nameOf = { toroid: "Toroid", sphere: "Sphere" } as const;

/** One toroid or sphere of the top load. */
export function ElementGroup({ index, count }: { index: number; count: number }) {
  const elements = useDesign((design) => design.topLoad.elements);
  const element = elements[index];
  if (!element) return null;
  const title = count > 1 ? `${nameOf[element.shape]} ${index + 1}` : nameOf[element.shape];
  const setElements = (next: unknown, label: string) => workbench.setValue("topLoad.elements", next, label);
  const move = (to: number) => setElements(moved(elements, index, to), "reorder top load");
  return (
    <Group
      title={title}
      actions={
        <span className={styles.actions}>
          {count > 1 && (
            <>
              <Button
                kind="bare"
                icon="up"
                aria-label={`Move ${title} up`}
                disabled={index === 0}
                onClick={() => move(index - 1)}
              />
              <Button
                kind="bare"
                icon="down"
                aria-label={`Move ${title} down`}
                disabled={index === count - 1}
                onClick={() => move(index + 1)}
              />
            </>
          )}
          <Button
            kind="bare"
            icon="remove"
            aria-label={`Remove ${title}`}
            onClick={() =>
              setElements(
                elements.filter((_, place) => place !== index),
                `remove ${title.toLowerCase()}`,
              )
            }
          >
            Remove
          </Button>
        </span>
      }
    >
      {fieldsOf[element.shape].map((field) => (
        <DesignField
          key={field}
          path={`topLoad.elements.${index}.${field}`}
          wide={field === "centreHeight" && element.shape === "toroid"}
        />
      ))}
    </Group>
  );
}
