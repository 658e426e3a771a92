import { valueAt } from "../../design/changeAt";
import { numberField } from "../../design/fields";
import { Button } from "../../ui/Button";
import { useDesign } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { DesignField } from "./DesignField";
import { Group } from "./Group";
import styles from "./OptionalGroup.module.css";

/**
 * A part to begin with: each of its fields at its declared default.
 * @param path of the part in the design, with `*` for an index
 */
function declaredDefaults(path: string, fields: readonly string[]): Record<string, number> {
  return Object.fromEntries(
    fields.map((name) => {
      const field = numberField(`${path}.${name}`);
      return [name, field.default ?? field.range.minimum];
    }),
  );
}

interface OptionalGroupProps {
  /** dotted path of the part, null in the design while it is absent */
  path: string;
  /** its name within a sentence, as in “strike rail” */
  name: string;
  title: string;
  fields: readonly string[];
}

/** A part that may be absent: added and removed as a whole. */
export function OptionalGroup({ path, name, title, fields }: OptionalGroupProps) {
  const present = useDesign((design) => valueAt(design, path) !== null);
  return (
    <Group
      title={title}
      actions={
        present ? (
          <Button kind="bare" icon="remove" onClick={() => workbench.setValue(path, null, `remove ${name}`)}>
            Remove
          </Button>
        ) : (
          <Button
            kind="bare"
            icon="plus"
            onClick={() => workbench.setValue(path, declaredDefaults(path, fields), `add ${name}`)}
          >
            Add
          </Button>
        )
      }
    >
      {present ? (
        fields.map((field, index) => (
          <DesignField
            key={field}
            path={`${path}.${field}`}
            wide={index === fields.length - 1 && index % 2 === 0}
          />
        ))
      ) : (
        <p className={styles.absent}>No {name} in this design.</p>
      )}
    </Group>
  );
}
