import { Button } from "../ui/Button";
import { Contained } from "../ui/Contained";
import { useUnitSystem } from "../workbench/session/hooks";
import { usePreferences } from "../workbench/session/preferences";
import { DesignMenu } from "./DesignMenu";
import { DesignTitle } from "./DesignTitle";
import styles from "./Header.module.css";
import { Mark } from "./Mark";
import { openSheet, openTheory } from "./place";
import { SaveStateSign } from "./SaveStateSign";
import { ShowName } from "./ShowName";
import { ThemeButton } from "./ThemeButton";
import { UndoRedo } from "./UndoRedo";

interface HeaderProps {
  onImport: () => void;
  onExample: () => void;
  onCautions: () => void;
}

/** The title block along the top: what is open, what was done, how it is read, where it goes. */
export function Header({ onImport, onExample, onCautions }: HeaderProps) {
  return (
    <div className={styles.head}>
      <h1 className={`${styles.cell} ${styles.name}`}>
        <Mark />
        <span className={styles.nameText}>Coilwright</span>
      </h1>
      <div className={`${styles.cell} ${styles.title}`}>
        <Contained what="title" inLine>
          <div className={styles.titles}>
            <ShowName />
            <DesignTitle />
          </div>
        </Contained>
        <Contained what="menu" inLine>
          <DesignMenu onImport={onImport} onExample={onExample} />
        </Contained>
      </div>
      <div className={styles.cell}>
        <Contained what="undo" inLine>
          <UndoRedo />
        </Contained>
      </div>
      <div className={styles.cell}>
        <UnitSwitch />
      </div>
      <div className={styles.cell}>
        <ThemeButton />
        <Button
          kind="bare"
          icon="book"
          aria-label="Theory"
          title="Theory and references"
          onClick={openTheory}
        />
        <Button kind="bare" icon="caution" aria-label="Cautions" title="Cautions" onClick={onCautions} />
      </div>
      <div className={`${styles.cell} ${styles.saveCell}`}>
        <Contained what="sign of saving" inLine>
          <SaveStateSign />
        </Contained>
      </div>
      <div className={`${styles.cell} ${styles.last}`}>
        <Button kind="filled" icon="sheet" aria-label="Build sheet" onClick={openSheet}>
          <span className={styles.wideOnly}>Build sheet</span>
        </Button>
      </div>
    </div>
  );
}

const systems = [
  { system: "metric", label: "mm" },
  { system: "inch", label: "inch" },
] as const;

function UnitSwitch() {
  const chosen = useUnitSystem();
  const setUnitSystem = usePreferences((preferences) => preferences.setUnitSystem);
  return (
    <fieldset className={styles.units}>
      <legend className="visually-hidden">Units</legend>
      {systems.map(({ system, label }) => (
        <label key={system}>
          <input
            type="radio"
            name="units"
            className="visually-hidden"
            checked={system === chosen}
            onChange={() => setUnitSystem(system)}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
