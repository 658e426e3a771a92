import { ResultFigure } from "../parts/ResultFigure";
import styles from "./KeyNumbers.module.css";

/** The key results, always in view while the design is edited. */
export function KeyNumbers() {
  return (
    <section aria-label="Key numbers">
      <dl className={styles.strip}>
        <ResultFigure id="secondary.resonance" size="large" />
        <ResultFigure id="primary.resonance" size="large" />
        <ResultFigure id="secondary.loadedResonance" />
        <ResultFigure id="coupling.circuit" />
        <ResultFigure id="topLoad.breakoutVoltage" caption="Breakout without point" />
        <ResultFigure id="response.lowerPole" />
        <ResultFigure id="response.upperPole" />
        <ResultFigure id="tank.characteristicImpedance" caption="Characteristic impedance" />
        <ResultFigure id="burst.peakPrimaryCurrent" />
        <ResultFigure id="burst.peakTopVoltage" />
        <ResultFigure id="drive.junctionTemperature" caption="Peak junction temperature" />
      </dl>
    </section>
  );
}
