import { describe, expect, it } from "vitest";
import { pierHallLeft } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import { PAIR_RESULTS } from "../../../src/evaluation/pair/pairRegister";
import { sourceText } from "../../../src/evaluation/register/sourceText";
import { SCORE_RESULTS } from "../../../src/evaluation/score/scoreResults";
import { provenanceInput } from "../../../src/panels/parts/provenanceInput";

const evaluation = evaluate(pierHallLeft);
const ENTRIES = [...PAIR_RESULTS, ...Object.values(SCORE_RESULTS)];

describe("the registers of score and pair", () => {
  it.each(ENTRIES.map((entry) => [entry.id, entry] as const))(
    "say of %s what goes in, each known to the popover, and leave nothing empty",
    (_, entry) => {
      for (const input of entry.inputs) {
        const { label, value } = provenanceInput(input, pierHallLeft, evaluation, "metric");
        expect(label).not.toBe("");
        expect(value ?? "").not.toMatch(/NaN|undefined/);
      }
      const { label, symbol, words, formula, source, validity, accuracy } = entry;
      for (const text of [label, symbol, words, formula, sourceText(source), validity, accuracy])
        expect(text.trim()).not.toBe("");
    },
  );
});
