import { type ReactNode, useState } from "react";
import { flushSync } from "react-dom";
import { KeyNumbers } from "../panels/keyNumbers/KeyNumbers";
import { GoToField } from "../panels/parts/GoToField";
import { TapBar } from "../panels/tuning/TapBar";
import { Contained } from "../ui/Contained";
import { Tabs } from "../ui/Tabs";
import styles from "./App.module.css";
import { DesignPanels } from "./DesignPanels";
import { Drawing } from "./Drawing";
import { Editable } from "./Editable";
import { FindingsDock } from "./FindingsDock";
import { goToField } from "./goToField";
import { viewTabs } from "./Views";

const panels = (
  <Editable>
    <DesignPanels />
  </Editable>
);

/** One column: the drawing stays in view above the tap, the key numbers and the form. */
export function PhoneLayout({ header }: { header: ReactNode }) {
  const [chosen, setChosen] = useState("design");
  const go = (where: string) => {
    flushSync(() => setChosen("design"));
    goToField(where);
  };
  return (
    <GoToField value={go}>
      <div className={styles.column}>
        <header>{header}</header>
        <main>
          <div className={styles.section}>
            <Drawing />
          </div>
          <Editable>
            <Contained what="tap bar">
              <TapBar />
            </Contained>
          </Editable>
          <Contained what="key numbers">
            <KeyNumbers />
          </Contained>
          <Contained what="list of findings">
            <FindingsDock onGo={go} />
          </Contained>
          <Tabs
            name="Views"
            tabs={[{ id: "design", label: "Design", content: panels, keep: true }, ...viewTabs]}
            chosen={chosen}
            onChoose={setChosen}
          />
        </main>
      </div>
    </GoToField>
  );
}
