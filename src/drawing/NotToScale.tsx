import styles from "./Drawing.module.css";

/** Lists below the drawing the sizes that are not drawn to scale. */
export function NotToScale({ names }: { names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <p className={styles.notToScale} role="note">
      Not drawn to scale: {names.join(", ")}.
    </p>
  );
}
