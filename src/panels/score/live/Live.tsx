import { useState } from "react";
import type { Coil } from "../../../calc/music/lane";
import type { Arrangement } from "../../../design/arrangement";
import type { CoilDesigns } from "../../../workbench/background/coilLoadsJob";
import { CoilChoice } from "../CoilChoice";
import { NoLoads } from "../NoLoads";
import { Part } from "../Part";
import { useCoilLoads } from "../useCoilLoads";
import styles from "./Live.module.css";
import { LiveCoil } from "./LiveCoil";

interface LiveProps {
  designs: CoilDesigns;
  arrangement: Arrangement;
}

function LiveContent({ designs, arrangement }: LiveProps) {
  const [coil, setCoil] = useState<Coil>("left");
  const loads = useCoilLoads(designs);
  const chosen = designs[coil] ? coil : "left";
  const design = designs[chosen];
  if (!design) return null;
  const load = loads?.[chosen];
  return (
    <>
      <p className={styles.note}>
        Sound only: no coil is driven from here. Every key keeps the limits of its coil: interrupter,
        over-current limit, bank, mains, bus and junction.
      </p>
      <CoilChoice label="Coil played by the keys" designs={designs} chosen={chosen} onChoose={setCoil} />
      {load === undefined ? (
        <NoLoads designs={designs} />
      ) : (
        <LiveCoil key={chosen} design={design} load={load} arrangement={arrangement} />
      )}
    </>
  );
}

/** A keyboard that plays one coil's gate as sound, within the limits of its scores. */
export function Live(props: LiveProps) {
  return (
    <Part title="Live keyboard">
      <LiveContent {...props} />
    </Part>
  );
}
