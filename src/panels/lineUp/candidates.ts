/** The top loads that are compared: made from the design's own, from stock sizes, changed and taken away. */
import type { TopLoad, TopLoadElement } from "../../calc/design-parts";
import type { LineUpCandidate, Show } from "../../design/show";
import type { StockTopLoad } from "../../design/stockTopLoads";
import { elementHalves } from "../../drawing/coilShape";

export const MOST_CANDIDATES = 4;

/** Height of an element's underside above ground, m. */
function underside(element: TopLoadElement): number {
  return element.centreHeight - elementHalves(element).halfHeight;
}

/** A stock size in the place of the design's own top load, its underside at the same height. */
export function stockTopLoad(stock: StockTopLoad, own: TopLoad, windingTop: number): TopLoad {
  const lowest = own.elements.length > 0 ? Math.min(...own.elements.map(underside)) : windingTop + 0.02;
  const half = stock.element.shape === "sphere" ? stock.element.diameter / 2 : stock.element.tubeDiameter / 2;
  const element = { ...stock.element, centreHeight: lowest + half } as TopLoadElement;
  return { ...own, elements: [element] };
}

/** The name of a size: what it measures. */
export function sizeName(topLoad: TopLoad): string {
  const sizes = topLoad.elements.map((element) =>
    element.shape === "sphere"
      ? `⌀ ${Math.round(element.diameter * 1000)}`
      : `${Math.round(element.outerDiameter * 1000)} × ${Math.round(element.tubeDiameter * 1000)}`,
  );
  return sizes.length > 0 ? `${sizes.join(" + ")} mm` : "Bare winding";
}

/** The candidates' curves are told apart by colour and dashes. */
export const CANDIDATE_STYLES: readonly { colour: string; dash?: string }[] = [
  { colour: "--live" },
  { colour: "--field", dash: "8 3" },
  { colour: "--winding", dash: "3 3" },
  { colour: "--ok", dash: "10 3 2 3" },
];

type Change = (candidates: LineUpCandidate[]) => LineUpCandidate[];

/** A show with other candidates. */
export function withCandidates(change: Change): (show: Show) => Show {
  return (show) => ({ ...show, lineUp: { ...show.lineUp, candidates: change(show.lineUp.candidates) } });
}

/** Adds a top load under an id that no other candidate has. */
export function added(topLoad: TopLoad): Change {
  return (candidates) => {
    const taken = new Set(candidates.map((candidate) => candidate.id));
    const id = ["a", "b", "c", "d"].find((each) => !taken.has(each)) ?? "a";
    return [...candidates, { id, name: sizeName(topLoad), topLoad, shown: true }];
  };
}

/** Changes one candidate; its name follows its size. */
export function changed(id: string, topLoad: TopLoad): Change {
  return (candidates) =>
    candidates.map((candidate) =>
      candidate.id === id ? { ...candidate, topLoad, name: sizeName(topLoad) } : candidate,
    );
}

export function removed(id: string): Change {
  return (candidates) => candidates.filter((candidate) => candidate.id !== id);
}
