import { roundedDomain } from "../../charts/axis";
import { Chart } from "../../charts/Chart";
import type { Curve } from "../../charts/curve";
import type { LineUpCandidate } from "../../design/show";
import { formatQuantity } from "../../units/format";
import type { CandidateEvaluations } from "../../workbench/background/candidateEvaluations";
import { useDesign, useUnitSystem } from "../../workbench/session/hooks";
import { CANDIDATE_STYLES } from "./candidates";

const Y_TICKS = 5;
const REACH = 0.12;

interface LineUpChartProps {
  candidates: readonly LineUpCandidate[];
  evaluations: CandidateEvaluations;
}

/** The candidates' tuning on one chart: the target frequency and poles of each, with the common primary. */
export function LineUpChart({ candidates, evaluations }: LineUpChartProps) {
  const system = useUnitSystem();
  const tap = useDesign((design) => design.primary.tap);
  const tunings = candidates.flatMap((candidate, index) => {
    const tuning = evaluations[candidate.id]?.tuning;
    return candidate.shown && tuning && tuning.curve.length > 1
      ? [{ candidate, tuning, style: CANDIDATE_STYLES[index] }]
      : [];
  });
  if (tunings.length === 0) return null;
  const { curve } = tunings[0].tuning;
  const taps = [curve[0].tap, curve[curve.length - 1].tap];
  const curves: Curve[] = [
    {
      id: "primary",
      label: "Primary",
      colour: "--copper",
      points: curve.map((point) => ({ x: point.tap, y: point.primaryResonance })),
    },
    ...tunings.flatMap(({ candidate, tuning, style }): Curve[] => [
      {
        ...style,
        id: `${candidate.id} aim`,
        label: `${candidate.name}: target`,
        points: taps.flatMap((x) =>
          tuning.targetResonance === null ? [] : { x, y: tuning.targetResonance },
        ),
      },
      {
        ...style,
        id: `${candidate.id} lower`,
        label: `${candidate.name}: lower pole`,
        points: tuning.curve.map((point) => ({ x: point.tap, y: point.lowerPole })),
      },
      {
        ...style,
        id: `${candidate.id} upper`,
        label: `${candidate.name}: upper pole`,
        points: tuning.curve.map((point) => ({ x: point.tap, y: point.upperPole })),
      },
    ]),
  ];
  // for a candidate whose target is not known yet, its poles stay in view
  const aims = tunings.map(({ tuning }) => tuning.targetResonance ?? tuning.curve[0].lowerPole);
  const around = { from: Math.min(...aims) * (1 - 2 * REACH), to: Math.max(...aims) * (1 + 2 * REACH) };
  return (
    <Chart
      key={candidates.map((candidate) => candidate.id).join(" ")}
      title="Tuning of all candidates"
      x={{
        label: "tap, turns from the start",
        domain: { from: taps[0], to: taps[1] },
        format: (value) => value.toFixed(Number.isInteger(value) ? 0 : 2),
      }}
      y={{
        label: "resonance",
        domain: roundedDomain(around, Y_TICKS),
        format: (value) => formatQuantity(value, "frequency", system, value % 1e4 === 0 ? 3 : 4).text,
      }}
      curves={curves}
      markers={[{ id: "present", label: "Present tap", colour: "--ink", x: tap }]}
    />
  );
}
