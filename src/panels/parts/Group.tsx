import type { ReactNode } from "react";
import fields from "../../ui/Field.module.css";
import styles from "./Group.module.css";

interface GroupProps {
  title?: string;
  actions?: ReactNode;
  children: ReactNode;
}

/** Related fields in one ruled block with a small heading. */
export function Group({ title, actions, children }: GroupProps) {
  return (
    <fieldset className={styles.group}>
      {title && <legend className="visually-hidden">{title}</legend>}
      {title && (
        <div className={styles.head}>
          <span aria-hidden="true" className={styles.title}>
            {title}
          </span>
          {actions}
        </div>
      )}
      <div className={fields.block}>{children}</div>
    </fieldset>
  );
}
