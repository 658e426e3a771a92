import { act, render } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { withValueAt } from "../../../src/design/changeAt";
import type { Design } from "../../../src/design/design";
import { exampleShow, pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import { PAIR_RESULTS } from "../../../src/evaluation/pair/pairRegister";
import { INPUT_GROUPS } from "../../../src/evaluation/register/inputGroups";
import { entryAt, RESULTS } from "../../../src/evaluation/register/register";
import { SCORE_RESULTS } from "../../../src/evaluation/score/scoreResults";
import { allFields, fieldAt } from "../../../src/fields/allFields";
import { Provenance } from "../../../src/panels/parts/Provenance";
import { provenanceInput } from "../../../src/panels/parts/provenanceInput";
import { newHistory } from "../../../src/workbench/session/history";
import { session } from "../../../src/workbench/session/session";
import { EMPTY_EVALUATION } from "../../../src/workbench/session/workbenchState";

const ENTRIES = [...RESULTS, ...PAIR_RESULTS, ...Object.values(SCORE_RESULTS)];
const INPUTS = [...new Set(ENTRIES.flatMap(({ inputs }) => inputs))];

const changed = (changes: Record<string, unknown>): Design =>
  Object.entries(changes).reduce((design, [path, value]) => withValueAt(design, path, value), pierHallLeft);

const BARE = changed({ "topLoad.elements": [], "topLoad.breakoutPoint": null });
const LEAST = changed({
  "topLoad.breakoutPoint": null,
  "primary.strikeRail": null,
  "drive.currentTransformer.turns": [40],
  "drive.commutation.mode": "fixed frequency",
  "drive.supply.arrangement": "bench",
  tuningAim: { kind: "unloaded" },
});

const STATES = [
  ["the left example", pierHallLeft, evaluate(pierHallLeft)],
  ["the right example", pierHallRight, evaluate(pierHallRight)],
  ["an empty top load", BARE, evaluate(BARE)],
  ["a design with nothing optional", LEAST, evaluate(LEAST)],
  ["a design of which no group can be solved", pierHallLeft, EMPTY_EVALUATION],
] as const;

const RAW = /NaN|undefined|null|Infinity|\[object/;

afterEach(() => vi.restoreAllMocks());

describe("the inputs that the register names", () => {
  it.each(INPUTS)("know what %s is, and lead to a declared field where it is one", (id) => {
    expect(Boolean(INPUT_GROUPS[id] ?? fieldAt(id) ?? entryAt(id)), id).toBe(true);
    const { label, field } = provenanceInput(id, pierHallLeft, STATES[0][2], "metric");
    expect(label.trim()).not.toBe("");
    expect(label).not.toBe(id);
    if (field !== null) expect(fieldAt(field), field).not.toBeNull();
    const setsFields = allFields.some(({ path }) => path === id || path.startsWith(`${id}.`));
    if (setsFields) expect(field).not.toBeNull();
  });

  it("are named once an entry, and no group stands for nothing", () => {
    for (const { id, inputs } of ENTRIES) expect(new Set(inputs).size, id).toBe(inputs.length);
    expect(Object.keys(INPUT_GROUPS).filter((id) => !INPUTS.includes(id))).toEqual([]);
  });

  it("stand for themselves where a name is known to nothing", () => {
    const unknown = provenanceInput("drive.colour", pierHallLeft, EMPTY_EVALUATION, "metric");
    expect(unknown).toEqual({ label: "drive.colour", value: null, field: null });
  });

  it("show a dash where an optional part is absent", () => {
    const { value } = provenanceInput("topLoad.breakoutPoint.length", BARE, EMPTY_EVALUATION, "metric");
    expect(value).toBe("–");
  });
});

describe.each(STATES)("the popovers of every result, with %s", (_, design, evaluation) => {
  it("say where it comes from, each input with its value", () => {
    const complaints = vi.spyOn(console, "error");
    const show = { ...exampleShow(), designs: { left: design, right: pierHallRight } };
    act(() => session.store.setState({ history: newHistory(show), evaluation }));
    render(
      ENTRIES.map((entry) => (
        <section key={entry.id} aria-label={entry.id}>
          <Provenance entry={entry} close={() => undefined} />
        </section>
      )),
    );
    const popovers = [...document.querySelectorAll("section")];
    expect(popovers).toHaveLength(ENTRIES.length);
    expect(popovers.length).toBeGreaterThan(200);
    for (const [place, popover] of popovers.entries()) {
      expect(popover.textContent).not.toMatch(RAW);
      expect(popover.querySelectorAll("li")).toHaveLength(ENTRIES[place].inputs.length);
    }
    expect(complaints).not.toHaveBeenCalled();
  });
});
