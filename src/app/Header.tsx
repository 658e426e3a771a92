import { placeIn, placeInShow } from "../panels/parts/places";
import { Button } from "../ui/Button";
import { Contained } from "../ui/Contained";
import type { IconName } from "../ui/Icon";
import { TextField } from "../ui/TextField";
import { useDesign, useShow, useUnitSystem } from "../workbench/session/hooks";
import { type Theme, usePreferences } from "../workbench/session/preferences";
import { workbench } from "../workbench/session/session";
import { DesignMenu } from "./DesignMenu";
import styles from "./Header.module.css";
import { openSheet, openTheory } from "./place";
import { SaveStateSign } from "./SaveStateSign";
import { UndoRedo } from "./UndoRedo";

const NEXT_THEME: Record<Theme, Theme> = { system: "light", light: "dark", dark: "system" };
const THEME_ICON: Record<Theme, IconName> = { system: "system", light: "sun", dark: "moon" };
const THEME_WORDS: Record<Theme, string> = {
  system: "As on this device",
  light: "Light",
  dark: "Dark",
};

/** Cycles through the themes: system, light, dark. */
function ThemeButton() {
  const theme = usePreferences((preferences) => preferences.theme);
  const setTheme = usePreferences((preferences) => preferences.setTheme);
  return (
    <Button
      kind="bare"
      icon={THEME_ICON[theme]}
      aria-label={`Theme: ${THEME_WORDS[theme]}`}
      title={`${THEME_WORDS[theme]}. Switch to: ${THEME_WORDS[NEXT_THEME[theme]]}`}
      onClick={() => setTheme(NEXT_THEME[theme])}
    />
  );
}

/** The show's name above the design's title; clearing it restores the old one. */
function ShowName() {
  const name = useShow((show) => show.name);
  return (
    <TextField
      id="show-name"
      className={styles.showName}
      label="Name of the show"
      maxLength={120}
      place={placeInShow("name")}
      value={name}
      onCommit={workbench.renameShow}
    />
  );
}

/** The app's logo: a flat spiral seen from above with its tap. */
function Mark({ size = 26 }: { size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 32 32" fill="none" aria-hidden="true" focusable="false">
      <path
        d="M16 16a2 2 0 0 1 4 0 4.5 4.5 0 0 1-9 0 7 7 0 0 1 14 0 9.5 9.5 0 0 1-19 0 12 12 0 0 1 24 0"
        stroke="var(--copper)"
        strokeWidth="2"
      />
      <path d="M16 1v8" stroke="var(--winding)" strokeWidth="2" />
      <circle cx="30" cy="16" r="2" fill="var(--live)" />
    </svg>
  );
}

/** The open design's title; clearing it restores the old one. */
export function DesignTitle() {
  const title = useDesign((design) => design.title);
  const id = useShow((show) => show.open);
  return (
    <TextField
      id="design-title"
      className={styles.titleInput}
      label="Title of the design"
      maxLength={120}
      place={placeIn(id, "title")}
      value={title}
      onCommit={(next) => workbench.renameDesign(id, next)}
    />
  );
}

interface HeaderProps {
  onImport: () => void;
  onExample: () => void;
  onCautions: () => void;
}

/** The title block along the top: open design, undo, units, theme, save state and build sheet. */
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
        <Contained what="save state" inLine>
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
