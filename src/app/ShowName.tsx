import { placeInShow } from "../panels/parts/places";
import { TextField } from "../ui/TextField";
import { useShow } from "../workbench/session/hooks";
import { workbench } from "../workbench/session/session";
import styles from "./Header.module.css";

/** The show's own name above the design's title, to be written over; an empty one gives the old one back. */
export function ShowName() {
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
