import styles from "./App.module.css";

/** The whole screen: one drawing sheet with its frame, the drawing in the middle. */
export function App() {
  return (
    <div className={styles.sheet}>
      <header className={styles.head} />
      <section className={styles.panels} aria-label="Design" />
      <main className={styles.drawing} />
      <section className={styles.results} aria-label="Results" />
      <section className={styles.findings} aria-label="Findings" />
    </div>
  );
}
