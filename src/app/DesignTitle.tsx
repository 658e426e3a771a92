import { placeIn } from "../panels/parts/places";
import { TextField } from "../ui/TextField";
import { useDesign, useShow } from "../workbench/session/hooks";
import { workbench } from "../workbench/session/session";
import styles from "./Header.module.css";

/** The open design's title, to be written over; an empty one gives the old one back. */
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
