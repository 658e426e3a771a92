import styles from "./Waiting.module.css";

/** Stands where a part is still being fetched. */
export function Waiting({ what }: { what: string }) {
  return <p className={styles.waiting}>Fetching the {what} …</p>;
}
