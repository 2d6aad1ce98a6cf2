import styles from "./App.module.css";

export function App() {
  return (
    <div className={styles.page}>
      <main className={styles.scene} aria-label="Scene" />
      <aside className={styles.verdict} aria-label="Verdict" />
      <section className={styles.time} aria-label="Time" />
    </div>
  );
}
