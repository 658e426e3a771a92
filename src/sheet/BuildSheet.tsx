import { heightAtTurn, radiusAtTurn } from "../calc/coil/primaryGeometry";
import { cautions, limitsSentence, practiceSentence } from "../design/cautions";
import { formatQuantity } from "../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import { Block } from "./Block";
import styles from "./BuildSheet.module.css";
import { DriveBlocks } from "./DriveBlocks";
import { FieldRow, ResultRow, Row } from "./Rows";
import { SheetDrawing } from "./SheetDrawing";
import { SheetFindings } from "./SheetFindings";
import { TurnTable } from "./TurnTable";

/** With more elements, or with findings below, the column beside the drawing is set tighter, to fit on the page. */
const ROOMY_ELEMENTS = 3;

function isoDate(date: Date): string {
  const pad = (value: number): string => String(value).padStart(2, "0");
  return `${date.getFullYear()}-${pad(date.getMonth() + 1)}-${pad(date.getDate())}`;
}

function TapBlock() {
  const system = useUnitSystem();
  const primary = useDesign((design) => design.primary);
  const tuning = useEvaluation((evaluation) => evaluation.tuning);
  const turns = (value: number | null | undefined): string => formatQuantity(value, "turns", system).text;
  const length = (value: number): string => formatQuantity(value, "length", system).text;
  const band = tuning?.suggestedTapBand;
  const { tap } = primary;
  const onConductor = tap > 0 && tap <= primary.turns;
  return (
    <Block title="Tap">
      <p className={styles.tap}>{turns(tap)}</p>
      <dl>
        <Row
          label={`Suggested (${tuning?.tuned ? "tuned" : "not tuned"})`}
          text={turns(tuning?.suggestedTap)}
        />
        <Row
          label="Range for winding tolerance"
          text={band ? `${turns(band.low)} … ${turns(band.high)}` : "–"}
        />
        <Row
          label="Radius and height at the tap"
          text={
            onConductor ? `${length(radiusAtTurn(primary, tap))}, ${length(heightAtTurn(primary, tap))}` : "–"
          }
        />
        <ResultRow id="primary.conductorLength" />
      </dl>
    </Block>
  );
}

function TopLoadBlock() {
  const { elements, breakoutPoint } = useDesign((design) => design.topLoad);
  const system = useUnitSystem();
  const length = (value: number): string => formatQuantity(value, "length", system).text;
  return (
    <Block title="Top load">
      <dl>
        {elements.map((element, index) => (
          <Row
            key={index}
            label={`${element.shape === "toroid" ? "Toroid" : "Sphere"}, centre at ${length(element.centreHeight)}`}
            text={
              element.shape === "toroid"
                ? `${length(element.outerDiameter)} × ${length(element.tubeDiameter)}`
                : `Ø ${length(element.diameter)}`
            }
          />
        ))}
        {breakoutPoint && <FieldRow path="topLoad.breakoutPoint.length" />}
        <ResultRow id="topLoad.capacitance" />
        <ResultRow id="topLoad.breakoutVoltage" />
      </dl>
    </Block>
  );
}

function RailRows() {
  const rail = useDesign((design) => design.primary.strikeRail);
  if (!rail) return <Row label="Strike rail" text="none" />;
  return (
    <>
      <FieldRow path="primary.strikeRail.radius" />
      <FieldRow path="primary.strikeRail.height" />
    </>
  );
}

function FrequencyBlock() {
  return (
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
  );
}

function TankBlock() {
  return (
    <Block title="Tank capacitor">
      <dl>
        <FieldRow path="tank.unitsInSeries" />
        <FieldRow path="tank.strings" />
        <FieldRow path="tank.unit.capacitance" />
        <ResultRow id="tank.capacitance" />
        <ResultRow id="tank.peakVoltageRating" />
      </dl>
    </Block>
  );
}

function WindingBlock() {
  return (
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
  );
}

function PrimaryBlock() {
  return (
    <Block title="Primary">
      <dl>
        <FieldRow path="primary.tubeDiameter" />
        <FieldRow path="primary.pitch" />
        <FieldRow path="primary.inclinationDegrees" />
        <FieldRow path="primary.leadInductance" />
        <ResultRow id="primary.inductance" label="Inductance to the tap" />
        <ResultRow id="primary.lowFrequencyInductance" label="On an LCR meter" />
        <ResultRow id="primary.fullConductorLength" />
        <RailRows />
      </dl>
    </Block>
  );
}

function Cautions() {
  return (
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
      <p>{limitsSentence}</p>
    </footer>
  );
}

/** The page for the workshop: light in any theme, for A4 and Letter. */
export function BuildSheet() {
  const title = useDesign((design) => design.title);
  const crowded = useDesign((design) => design.topLoad.elements.length > ROOMY_ELEMENTS);
  const faulty = useEvaluation(({ findings }) => findings.some(({ severity }) => severity !== "note"));
  return (
    <article
      className={faulty ? `${styles.sheet} ${styles.faulty}` : styles.sheet}
      data-theme="light"
      aria-label="Build sheet"
    >
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
        <div className={crowded || faulty ? `${styles.beside} ${styles.dense}` : styles.beside}>
          <TapBlock />
          <FrequencyBlock />
          <TankBlock />
          <TopLoadBlock />
        </div>
      </div>
      <div className={styles.foot}>
        <WindingBlock />
        <PrimaryBlock />
        <TurnTable />
      </div>
      <div className={`${styles.foot} ${styles.drive}`}>
        <DriveBlocks />
      </div>
      <SheetFindings />
      <Cautions />
    </article>
  );
}
