import { valueAt } from "../../design/changeAt";
import type { GroupDeclaration, Parts } from "../../fields/declaration";
import { defaultValue } from "../../fields/defaults";
import { Button } from "../../ui/Button";
import { useDesign } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { DesignField } from "./DesignField";
import { Group } from "./Group";
import styles from "./OptionalGroup.module.css";

interface OptionalGroupProps<Of extends Parts> {
  /** dotted path of the part; its value is null while it is absent */
  path: string;
  declaration: GroupDeclaration<Of, true>;
  /** its name within a sentence, such as “strike rail” */
  name: string;
  title: string;
  fields: readonly (keyof Of & string)[];
}

/** An optional part, added and removed as a whole. */
export function OptionalGroup<Of extends Parts>(props: OptionalGroupProps<Of>) {
  const { path, declaration, name, title, fields } = props;
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
            onClick={() => workbench.setValue(path, defaultValue(declaration), `add ${name}`)}
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
