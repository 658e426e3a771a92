import { REFERENCE_TABLE } from "virtual:reference-table";
import { ModelBlock, ResultList } from "./ModelBlock";
import { ReferenceGroup } from "./ReferenceGroup";
import type { TheorySection } from "./section";
import { OTHER_RESULTS, SECTIONS } from "./sections";
import styles from "./Theory.module.css";
import { Works } from "./Works";

const OTHER = { id: "other", title: "Geometry and definitions" };
const WORKS_CITED = { id: "works", title: "Works cited" };

function goTo(id: string) {
  const heading = document.getElementById(`theory-${id}`);
  heading?.scrollIntoView?.({ block: "start" });
  heading?.focus({ preventScroll: true });
}

/** The URL fragment already selects this page, so the contents cannot be links to fragments. */
function Contents() {
  return (
    <nav className={styles.contents} aria-label="Contents">
      {[...SECTIONS, OTHER, WORKS_CITED].map(({ id, title }) => (
        <button type="button" key={id} onClick={() => goTo(id)}>
          {title}
        </button>
      ))}
    </nav>
  );
}

function SectionHead({ id, title }: { id: string; title: string }) {
  return (
    <h2 id={`theory-${id}`} tabIndex={-1}>
      {title}
    </h2>
  );
}

function Checks({ groups }: { groups: readonly string[] }) {
  return (
    <div className={styles.checks}>
      <h3>Comparison with published and computed references</h3>
      {groups.map((group) => (
        <ReferenceGroup
          key={group}
          name={group}
          rows={REFERENCE_TABLE.filter((row) => row.group === group)}
        />
      ))}
    </div>
  );
}

function Section({ section }: { section: TheorySection }) {
  return (
    <section className={styles.section} aria-labelledby={`theory-${section.id}`}>
      <SectionHead {...section} />
      {section.models.map((model) => (
        <ModelBlock key={model.title} model={model} />
      ))}
      {section.checkedBy.length > 0 && <Checks groups={section.checkedBy} />}
    </section>
  );
}

/** The theory page: models, equations, sources and the comparison with references. */
export function Theory() {
  return (
    <div className={styles.page}>
      <header className={styles.opening}>
        <h1>Theory and references</h1>
        <p>
          Every model with its equations, sources and range of validity. Each section ends with its share of
          the {REFERENCE_TABLE.length} external reference values against which the models are tested, and with
          the values that this version computes. A deviation is computed over reference less one, or a
          difference where the reference is near zero or printed to a few places.
        </p>
      </header>
      <Contents />
      {SECTIONS.map((section) => (
        <Section key={section.id} section={section} />
      ))}
      <section className={styles.section} aria-labelledby="theory-other">
        <SectionHead {...OTHER} />
        <ResultList entries={OTHER_RESULTS} />
      </section>
      <section className={styles.section} aria-labelledby="theory-works">
        <SectionHead {...WORKS_CITED} />
        <p>A work that was not available is cited from memory: check the passage before you rely on it.</p>
        <Works />
      </section>
      <footer className={styles.foot}>
        <a href="./licences.txt">Licences of this program and of what it contains</a>
      </footer>
    </div>
  );
}
