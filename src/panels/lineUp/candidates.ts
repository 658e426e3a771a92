/** The candidates of the top load comparison: adding, changing and removing them. */
import type { TopLoad, TopLoadElement } from "../../calc/design-parts";
import type { LineUpCandidate, Show } from "../../design/show";
import type { StockTopLoad } from "../../design/stockTopLoads";
import { elementHalves } from "../../drawing/coilShape";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";

export const MOST_CANDIDATES = 4;

/** Height of an element's underside above ground, m. */
function underside(element: TopLoadElement): number {
  return element.centreHeight - elementHalves(element).halfHeight;
}

/** The design's top load replaced by a stock size with its underside at the same height. */
export function stockTopLoad(stock: StockTopLoad, own: TopLoad, windingTop: number): TopLoad {
  const lowest = own.elements.length > 0 ? Math.min(...own.elements.map(underside)) : windingTop + 0.02;
  const half = stock.element.shape === "sphere" ? stock.element.diameter / 2 : stock.element.tubeDiameter / 2;
  const element = { ...stock.element, centreHeight: lowest + half } as TopLoadElement;
  return { ...own, elements: [element] };
}

/** The name of a top load: its dimensions in the user's units. */
export function sizeName(topLoad: TopLoad, system: UnitSystem): string {
  const size = (value: number): string =>
    system === "metric"
      ? String(Math.round(value * 1000))
      : formatQuantity(value, "smallLength", system, 3).number;
  const unit = formatQuantity(1, "smallLength", system).unit;
  const sizes = topLoad.elements.map((element) =>
    element.shape === "sphere"
      ? `Ø ${size(element.diameter)}`
      : `${size(element.outerDiameter)} × ${size(element.tubeDiameter)}`,
  );
  return sizes.length > 0 ? `${sizes.join(" + ")} ${unit}` : "Bare winding";
}

/** The candidates with their names on screen. */
export function named(candidates: readonly LineUpCandidate[], system: UnitSystem): LineUpCandidate[] {
  return candidates.map((candidate) => ({ ...candidate, name: sizeName(candidate.topLoad, system) }));
}

/** The candidates' curves differ in colour and dashes. */
export const CANDIDATE_STYLES: readonly { colour: string; dash?: string }[] = [
  { colour: "--live" },
  { colour: "--field", dash: "8 3" },
  { colour: "--winding", dash: "3 3" },
  { colour: "--ok", dash: "10 3 2 3" },
];

type Change = (candidates: LineUpCandidate[]) => LineUpCandidate[];

/** A change of the show's candidates. */
export function withCandidates(change: Change): (show: Show) => Show {
  return (show) => ({ ...show, lineUp: { ...show.lineUp, candidates: change(show.lineUp.candidates) } });
}

/** Adds a top load under an id that no other candidate has. */
export function added(topLoad: TopLoad): Change {
  return (candidates) => {
    const taken = new Set(candidates.map((candidate) => candidate.id));
    const id = ["a", "b", "c", "d"].find((each) => !taken.has(each)) ?? "a";
    return [...candidates, { id, name: sizeName(topLoad, "metric"), topLoad, shown: true }];
  };
}

/** Changes one candidate; its name follows its size. */
export function changed(id: string, topLoad: TopLoad): Change {
  return (candidates) =>
    candidates.map((candidate) =>
      candidate.id === id ? { ...candidate, topLoad, name: sizeName(topLoad, "metric") } : candidate,
    );
}

/** Shows a candidate's curves, or hides them. */
export function toggledCurves(id: string): Change {
  return (candidates) =>
    candidates.map((candidate) =>
      candidate.id === id ? { ...candidate, shown: !candidate.shown } : candidate,
    );
}

export function removed(id: string): Change {
  return (candidates) => candidates.filter((candidate) => candidate.id !== id);
}
