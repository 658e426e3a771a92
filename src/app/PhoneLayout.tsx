import { type ReactNode, useState } from "react";
import { flushSync } from "react-dom";
import { KeyNumbers } from "../panels/keyNumbers/KeyNumbers";
import { TapBar } from "../panels/tuning/TapBar";
import { Tabs } from "../ui/Tabs";
import styles from "./App.module.css";
import { DesignPanels } from "./DesignPanels";
import { Drawing } from "./Drawing";
import { FindingsDock } from "./FindingsDock";
import { goToField } from "./goToField";
import { viewTabs } from "./Views";

/** One column: the drawing stays in sight above the tap, the numbers and what is being changed. */
export function PhoneLayout({ header }: { header: ReactNode }) {
  const [chosen, setChosen] = useState("design");
  const go = (where: string) => {
    flushSync(() => setChosen("design"));
    goToField(where);
  };
  return (
    <div className={styles.column}>
      <header>{header}</header>
      <main>
        <div className={styles.section}>
          <Drawing />
        </div>
        <TapBar />
        <KeyNumbers />
        <FindingsDock onGo={go} />
        <Tabs
          name="Views"
          tabs={[{ id: "design", label: "Design", content: <DesignPanels />, keep: true }, ...viewTabs]}
          chosen={chosen}
          onChoose={setChosen}
        />
      </main>
    </div>
  );
}
