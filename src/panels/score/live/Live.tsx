import { useState } from "react";
import type { Coil } from "../../../calc/music/lane";
import type { Arrangement } from "../../../design/arrangement";
import type { CoilDesigns } from "../../../workbench/background/coilLoadsJob";
import { CoilChoice } from "../CoilChoice";
import { LoadsNotThere } from "../LoadsNotThere";
import { Part } from "../Part";
import { useCoilLoads } from "../useCoilLoads";
import styles from "./Live.module.css";
import { LiveCoil } from "./LiveCoil";

interface LiveProps {
  designs: CoilDesigns;
  arrangement: Arrangement;
}

function LiveOf({ designs, arrangement }: LiveProps) {
  const [coil, setCoil] = useState<Coil>("left");
  const loads = useCoilLoads(designs);
  const chosen = designs[coil] ? coil : "left";
  const design = designs[chosen];
  if (!design) return null;
  const load = loads?.[chosen];
  return (
    <>
      <p className={styles.note}>
        Sound alone: nothing is driven from here. Every key keeps the limits of its coil: interrupter,
        over-current limit, bank, mains, bus and junction.
      </p>
      <CoilChoice label="Coil under the keys" designs={designs} chosen={chosen} onChoose={setCoil} />
      {load === undefined ? (
        <LoadsNotThere designs={designs} />
      ) : (
        <LiveCoil key={chosen} design={design} load={load} arrangement={arrangement} />
      )}
    </>
  );
}

/** A keyboard that plays one coil's gate in the browser, through the limits of its score. */
export function Live(props: LiveProps) {
  return (
    <Part title="Live keyboard">
      <LiveOf {...props} />
    </Part>
  );
}
