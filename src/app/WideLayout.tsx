import type { ReactNode } from "react";
import { KeyNumbers } from "../panels/keyNumbers/KeyNumbers";
import { GoToField } from "../panels/parts/GoToField";
import { TapBar } from "../panels/tuning/TapBar";
import { Contained } from "../ui/Contained";
import styles from "./App.module.css";
import { DesignPanels } from "./DesignPanels";
import { Drawing } from "./Drawing";
import { Editable } from "./Editable";
import { FindingsDock } from "./FindingsDock";
import { goToField } from "./goToField";
import { Views } from "./Views";

/** Three columns in the frame of a drawing sheet: form, drawing and results. */
export function WideLayout({ header }: { header: ReactNode }) {
  return (
    <GoToField value={goToField}>
      <div className={styles.sheet}>
        <header className={styles.head}>{header}</header>
        <section className={styles.panels} aria-label="Design" tabIndex={-1}>
          <Editable>
            <DesignPanels />
          </Editable>
        </section>
        <main className={styles.drawing}>
          <div className={styles.section}>
            <Drawing />
          </div>
          <Editable>
            <Contained what="tap bar">
              <TapBar />
            </Contained>
          </Editable>
        </main>
        <section className={styles.results} aria-label="Results">
          <Contained what="key numbers">
            <KeyNumbers />
          </Contained>
          <Views />
        </section>
        <section className={styles.findings} aria-label="Findings">
          <Contained what="list of findings">
            <FindingsDock onGo={goToField} />
          </Contained>
        </section>
      </div>
    </GoToField>
  );
}
