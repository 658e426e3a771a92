import { useRef } from "react";
import { TAP_STEP } from "../../fields/primaryFields";
import { formatQuantity } from "../../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { moveTap } from "../../workbench/session/moveTap";
import { workbench } from "../../workbench/session/session";
import { TapRuler } from "./TapRuler";
import styles from "./TapSlider.module.css";

/** Slides the tap along the turns; one drag is one undo step, and Escape restores the old tap. */
export function TapSlider() {
  const tap = useDesign((design) => design.primary.tap);
  const turns = useDesign((design) => design.primary.turns);
  const tuning = useEvaluation((evaluation) => evaluation.tuning);
  const system = useUnitSystem();
  const gesture = useTapGesture();
  return (
    <div className={styles.slider}>
      <TapRuler
        turns={turns}
        suggested={tuning?.suggestedTap ?? null}
        band={tuning?.suggestedTapBand ?? null}
      />
      <input
        type="range"
        className={styles.range}
        aria-label="Tap along the primary"
        aria-valuetext={formatQuantity(tap, "turns", system).text}
        min={0}
        max={turns}
        step={TAP_STEP}
        value={tap}
        onChange={(event) => gesture.move(Number(event.target.value))}
        onPointerUp={() => gesture.end()}
        onKeyUp={() => gesture.end("keys on the tap slider")}
        onBlur={() => gesture.end()}
        onKeyDown={(event) => event.key === "Escape" && gesture.cancel()}
      />
    </div>
  );
}

function useTapGesture() {
  const active = useRef(false);
  const finish = (action: () => void) => {
    if (!active.current) return;
    active.current = false;
    action();
  };
  return {
    move(tap: number) {
      if (!active.current) workbench.begin("move tap");
      active.current = true;
      moveTap(tap);
    },
    /** successive keys are one run, undone in one step */
    end: (run?: string) => finish(() => workbench.commit(run)),
    cancel: () => finish(workbench.cancel),
  };
}
