import styles from "./Drawing.module.css";

/** Names under the drawing what it does not show as large or as small as it is. */
export function NotToScale({ names }: { names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <p className={styles.notToScale} role="note">
      Not drawn to scale: {names.join(", ")}.
    </p>
  );
}
