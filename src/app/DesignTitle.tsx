import { useState } from "react";
import { useOnChange } from "../ui/useOnChange";
import { useDesign, useShow } from "../workbench/hooks";
import { workbench } from "../workbench/session";
import styles from "./Header.module.css";

/** The open design's title, to be written over; an empty one gives the old one back. */
export function DesignTitle() {
  const title = useDesign((design) => design.title);
  const id = useShow((show) => show.open);
  const [draft, setDraft] = useState<string | null>(null);
  // a title changed from elsewhere outdates the draft
  useOnChange(`${id} ${title}`, () => setDraft(null));
  const take = () => {
    const next = draft?.trim();
    setDraft(null);
    if (next && next !== title) workbench.renameDesign(id, next);
  };
  return (
    <input
      id="design-title"
      className={styles.titleInput}
      aria-label="Title of the design"
      spellCheck={false}
      maxLength={120}
      data-draft={draft !== null || undefined}
      value={draft ?? title}
      onChange={(event) => setDraft(event.target.value)}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === "Enter") take();
        if (event.key === "Escape") setDraft(null);
      }}
    />
  );
}
