import { Button } from "../../ui/Button";
import { useDesign, useEvaluation } from "../../workbench/session/hooks";
import { applyTap } from "../../workbench/session/moveTap";
import { DesignField } from "../parts/DesignField";
import { ResultFigure } from "../parts/ResultFigure";
import styles from "./TapBar.module.css";
import { TapSlider } from "./TapSlider";
import { TuningState } from "./TuningState";

/** The tap controls below the drawing: slider, field, suggested tap and the tuning state. */
export function TapBar() {
  const suggested = useEvaluation((evaluation) => evaluation.tuning?.suggestedTap ?? null);
  const turns = useDesign((design) => design.primary.turns);
  return (
    <section className={styles.bar} aria-label="Tap">
      <TapSlider />
      <div className={styles.cells}>
        <DesignField path="primary.tap" quiet />
        <dl className={styles.suggested}>
          <ResultFigure id="tuning.suggestedTap" size="large" />
        </dl>
        <TuningState />
        <Button
          kind="filled"
          className={styles.take}
          disabled={suggested === null || suggested > turns}
          onClick={() => suggested !== null && applyTap(suggested, "use suggested tap")}
        >
          Use suggested tap
        </Button>
      </div>
    </section>
  );
}
