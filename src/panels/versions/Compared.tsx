import type { Show } from "../../design/show";
import { titleOf } from "../../design/titleOf";
import type { UnitSystem } from "../../units/unitSystem";
import { ComparedTable } from "./ComparedTable";
import { type ComparedDesign, comparedShow, designRows } from "./comparedRows";
import styles from "./Versions.module.css";
import type { VersionDocument } from "./versionDocument";

const SAME = "It is identical to the present one.";

const STATES: Record<Exclude<ComparedDesign["state"], "differs">, string> = {
  "only then": "only in this version",
  "only now": "only in the present show",
};

function count(rows: readonly unknown[]): string {
  return `${rows.length} ${rows.length === 1 ? "field differs" : "fields differ"}`;
}

function DesignOfShow({ design }: { design: ComparedDesign }) {
  if (design.state !== "differs")
    return (
      <p>
        <strong>{titleOf(design)}</strong>: {STATES[design.state]}.
      </p>
    );
  return (
    <details className={styles.design}>
      <summary>
        <strong>{titleOf(design)}</strong>: {count(design.rows)}
      </summary>
      <ComparedTable rows={design.rows} caption={`Differences of ${titleOf(design)}`} />
    </details>
  );
}

function ShowCompared({ then, now, system }: { then: Show; now: Show; system: UnitSystem }) {
  const { designs, rows } = comparedShow(then, now, system);
  if (designs.length === 0 && rows.length === 0) return <p>{SAME}</p>;
  return (
    <>
      {designs.map((design) => (
        <DesignOfShow key={design.id} design={design} />
      ))}
      {rows.length > 0 && <ComparedTable rows={rows} caption="Differences of the show" />}
    </>
  );
}

interface ComparedProps {
  document: VersionDocument | null;
  /** of the version's design; null for a show */
  designId: string | null;
  show: Show;
  system: UnitSystem;
}

/** The fields in which a version differs from the present document. */
export function Compared({ document, designId, show, system }: ComparedProps) {
  if (document === null) return <p>Reading the version …</p>;
  if (document.kind === "unreadable") return <p>{document.sentence}</p>;
  if (document.kind === "show") return <ShowCompared then={document.show} now={show} system={system} />;
  const present = designId !== null && Object.hasOwn(show.designs, designId) ? show.designs[designId] : null;
  if (!present) return <p>This design is no longer in the show, so there is nothing to compare it with.</p>;
  const rows = designRows(document.design, present, system);
  if (rows.length === 0) return <p>{SAME}</p>;
  return (
    <>
      <p>{count(rows)}.</p>
      <ComparedTable rows={rows} caption="Differences of the design" />
    </>
  );
}
