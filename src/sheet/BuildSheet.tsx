import { cautions, practiceSentence } from "../design/cautions";
import { formatQuantity } from "../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../workbench/hooks";
import { Block } from "./Block";
import styles from "./BuildSheet.module.css";
import { FieldRow, ResultRow, Row } from "./Rows";
import { SheetDrawing } from "./SheetDrawing";
import { TurnTable } from "./TurnTable";

function isoDate(date: Date): string {
  const pad = (value: number): string => String(value).padStart(2, "0");
  return `${date.getFullYear()}-${pad(date.getMonth() + 1)}-${pad(date.getDate())}`;
}

function TapBlock() {
  const system = useUnitSystem();
  const tap = useDesign((design) => design.primary.tap);
  const tuning = useEvaluation((evaluation) => evaluation.tuning);
  const turns = (value: number | null | undefined): string => formatQuantity(value, "turns", system).text;
  const band = tuning?.suggestedTapBand;
  return (
    <Block title="Tap">
      <p className={styles.tap}>{turns(tap)}</p>
      <dl>
        <Row label="Suggested" text={turns(tuning?.suggestedTap)} />
        <Row
          label="Within a winding's tolerance"
          text={band ? `${turns(band.low)} … ${turns(band.high)}` : "–"}
        />
        <Row label="State" text={tuning?.tuned ? "tuned" : "not tuned"} />
      </dl>
    </Block>
  );
}

function TopLoadBlock() {
  const elements = useDesign((design) => design.topLoad.elements);
  const system = useUnitSystem();
  const length = (value: number): string => formatQuantity(value, "length", system).text;
  return (
    <Block title="Top load">
      <dl>
        {elements.map((element) => (
          <Row
            key={`${element.shape} ${element.centreHeight}`}
            label={element.shape === "toroid" ? "Toroid, outer × tube" : "Sphere"}
            text={
              element.shape === "toroid"
                ? `${length(element.outerDiameter)} × ${length(element.tubeDiameter)}`
                : length(element.diameter)
            }
          />
        ))}
        {elements.map((element) => (
          <Row
            key={`height ${element.shape} ${element.centreHeight}`}
            label="Centre height"
            text={length(element.centreHeight)}
          />
        ))}
        <ResultRow id="topLoad.capacitance" />
        <ResultRow id="topLoad.breakoutVoltage" />
      </dl>
    </Block>
  );
}

/** The one page that goes to the workshop, light on any theme, for A4 and Letter alike. */
export function BuildSheet() {
  const title = useDesign((design) => design.title);
  return (
    <article className={styles.sheet} data-theme="light" aria-label="Build sheet">
      <header className={styles.head}>
        <h1>{title || "Untitled coil"}</h1>
        <p>
          Build sheet · Coilwright
          <br />
          {isoDate(new Date())}
        </p>
      </header>
      <div className={styles.body}>
        <SheetDrawing />
        <div className={styles.beside}>
          <TapBlock />
          <Block title="Predicted frequencies">
            <dl>
              <ResultRow id="secondary.bareResonance" label="Bare winding" />
              <ResultRow id="secondary.resonance" label="Secondary, no spark" />
              <ResultRow id="secondary.loadedResonance" label="Secondary with the spark" />
              <ResultRow id="primary.resonance" />
              <ResultRow id="response.lowerPole" />
              <ResultRow id="response.upperPole" />
              <ResultRow id="coupling.circuit" />
            </dl>
          </Block>
          <Block title="Tank capacitor">
            <dl>
              <FieldRow path="tank.unitsInSeries" />
              <FieldRow path="tank.strings" />
              <FieldRow path="tank.unit.capacitance" />
              <ResultRow id="tank.capacitance" />
              <ResultRow id="tank.peakVoltageRating" />
            </dl>
          </Block>
          <TopLoadBlock />
        </div>
      </div>
      <div className={styles.foot}>
        <Block title="Secondary winding">
          <dl>
            <FieldRow path="secondary.formerDiameter" />
            <FieldRow path="secondary.windingLength" />
            <FieldRow path="secondary.turns" />
            <FieldRow path="secondary.wire.conductorDiameter" />
            <FieldRow path="secondary.wire.overallDiameter" />
            <FieldRow path="secondary.baseHeight" />
            <ResultRow id="secondary.wireLength" />
            <ResultRow id="secondary.wireMass" />
            <ResultRow id="secondary.dcResistance" />
            <ResultRow id="secondary.inductance" />
          </dl>
        </Block>
        <Block title="Primary">
          <dl>
            <FieldRow path="primary.tubeDiameter" />
            <FieldRow path="primary.pitch" />
            <FieldRow path="primary.inclinationDegrees" />
            <FieldRow path="primary.leadInductance" />
            <ResultRow id="primary.inductance" label="Inductance to the tap" />
            <ResultRow id="primary.lowFrequencyInductance" label="A bridge meter reads" />
            <ResultRow id="primary.fullConductorLength" />
          </dl>
        </Block>
        <Block title="Primary, radius at each turn">
          <TurnTable />
        </Block>
      </div>
      <footer className={styles.cautions}>
        <p className={styles.practice}>
          <strong>This can kill.</strong> {practiceSentence}
        </p>
        <ul>
          {cautions.map((caution) => (
            <li key={caution.code}>
              <strong>{caution.title}.</strong> {caution.sentence}
            </li>
          ))}
        </ul>
        <p>Burst currents and the limits of the switches are not yet computed on this sheet.</p>
      </footer>
    </article>
  );
}
