import { Button } from "../ui/Button";
import { FollowedProgress } from "../ui/FollowedProgress";
import { formatQuantity } from "../units/format";
import { SWEEPS, type SweepName } from "../workbench/background/sweepVariables";
import {
  type FollowedSweep,
  type SweepPoint,
  tuningBatch,
  useTuningSweep,
} from "../workbench/background/tuningSweeps";
import { useDesign, useUnitSystem } from "../workbench/session/hooks";
import { type Domain, roundedDomain } from "./axis";
import { Chart } from "./Chart";
import styles from "./Chart.module.css";
import type { Curve, Marker } from "./curve";

const Y_TICKS = 5;
const COUPLING_HEIGHT = 150;

type CurveOf = Omit<Curve, "points" | "id"> & { id: keyof SweepPoint };

const RESONANCES: readonly CurveOf[] = [
  { id: "primaryResonance", label: "Primary", colour: "--copper" },
  { id: "resonance", label: "Secondary, no spark", colour: "--winding" },
  { id: "loadedResonance", label: "Secondary with the spark", colour: "--winding", dash: "7 4" },
  { id: "lowerPole", label: "Lower pole", colour: "--field" },
  { id: "upperPole", label: "Upper pole", colour: "--field" },
  { id: "loadedLowerPole", label: "Lower pole with the spark", colour: "--field", dash: "3 3" },
  { id: "loadedUpperPole", label: "Upper pole with the spark", colour: "--field", dash: "3 3" },
];

const COUPLING: readonly CurveOf[] = [
  { id: "coupling", label: "Coupling of the circuit", colour: "--copper" },
];

function curvesOf(points: readonly SweepPoint[], curves: readonly CurveOf[]): Curve[] {
  return curves.map((curve) => ({
    ...curve,
    points: points.map((point) => ({ x: point.x, y: point[curve.id] })),
  }));
}

function domainOf(curves: readonly Curve[]): Domain {
  const values = curves.flatMap(({ points }) => points.map(({ y }) => y));
  return roundedDomain({ from: Math.min(...values), to: Math.max(...values) }, Y_TICKS);
}

function markersOf(present: number): Marker[] {
  return [{ id: "present", label: "Present value", colour: "--live", x: present }];
}

/** The sweep's progress, or what is missing from it. */
function SweepStatus({ name, sweep, cancelled, cancel, again }: FollowedSweep & { name: SweepName }) {
  const { label } = SWEEPS[name];
  const failed = sweep?.failed ?? 0;
  return (
    <>
      <FollowedProgress
        store={tuningBatch.progress}
        label={`Tuning against the ${label}`}
        onCancel={cancel}
      />
      {(cancelled || failed > 0) && (
        <p className={styles.none} role="status">
          {cancelled
            ? "The sweep was cancelled; the curves shown are out of date. "
            : `${failed} ${failed === 1 ? "point" : "points"} of the sweep could not be computed and ${failed === 1 ? "is" : "are"} left out. `}
          <Button onClick={again}>Compute again</Button>
        </p>
      )}
    </>
  );
}

/** Resonances, poles and coupling against a quantity other than the tap. */
export function SweepChart({ name }: { name: SweepName }) {
  const design = useDesign((each) => each);
  const followed = useTuningSweep(design, name);
  const value = SWEEPS[name].present(design);
  if (value === null) return <p className={styles.none}>This design has no toroid to change.</p>;
  return (
    <>
      <SweepStatus name={name} {...followed} />
      <SweptCurves name={name} points={followed.sweep?.points ?? null} value={value} />
    </>
  );
}

interface SweptCurvesProps {
  name: SweepName;
  points: readonly SweepPoint[] | null;
  /** present value of the swept quantity */
  value: number;
}

function SweptCurves({ name, points, value }: SweptCurvesProps) {
  const system = useUnitSystem();
  const { label, dimension } = SWEEPS[name];
  if (!points) return <p className={styles.none}>Computing the tuning against the {label} …</p>;
  if (points.length < 2)
    return <p className={styles.none}>The tuning cannot be computed because the coil has no solution.</p>;
  const [resonances, coupling] = [curvesOf(points, RESONANCES), curvesOf(points, COUPLING)];
  const x = {
    label,
    domain: { from: points[0].x, to: points[points.length - 1].x },
    format: (each: number) => formatQuantity(each, dimension, system, 3).text,
  };
  const markers = markersOf(value);
  return (
    <>
      <Chart
        title="Tuning"
        x={x}
        y={{
          label: "resonance",
          domain: domainOf(resonances),
          format: (each) => formatQuantity(each, "frequency", system, 4).text,
        }}
        curves={resonances}
        markers={markers}
      />
      <Chart
        title="Coupling"
        x={x}
        y={{
          label: "coupling of the circuit",
          domain: domainOf(coupling),
          format: (each) => formatQuantity(each, "ratio", system, 3).text,
        }}
        curves={coupling}
        markers={markers}
        height={COUPLING_HEIGHT}
      />
    </>
  );
}
