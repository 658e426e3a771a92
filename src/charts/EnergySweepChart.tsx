import type { EnergySweep } from "../calc/circuit/energySweep";
import { Button } from "../ui/Button";
import { FollowedProgress } from "../ui/FollowedProgress";
import type { Dimension } from "../units/dimension";
import { formatQuantity } from "../units/format";
import { useDesign, useEnergySweep, useUnitSystem } from "../workbench/session/hooks";
import { applyTap, dragTap } from "../workbench/session/moveTap";
import { energySweeps } from "../workbench/session/session";
import { type Domain, roundedDomain } from "./axis";
import { Chart } from "./Chart";
import type { Curve, Level, Marker } from "./curve";
import styles from "./EnergySweep.module.css";
import { energyCurves } from "./energyCurves";
import { whyNoEnergy } from "./noEnergy";
import { withoutTrailingZeros } from "./withoutTrailingZeros";

const Y_TICKS = 5;
const CURRENT_HEIGHT = 200;
/** A level above this multiple of the largest current is listed in the legend but does not widen the axis. */
const LEVEL_IN_VIEW = 2;
/** Energies above this fraction of the maximum are kept in view. */
const NOTICEABLE = 0.03;
/** turns, shown beyond them on either side */
const MARGIN = 0.25;
/** turns, below which two taps count as the same */
const SAME_TAP = 1e-3;

/** From zero to the largest value, or to a level not far above it. */
function domainOf(curves: readonly Curve[], levels: readonly number[] = []) {
  const most = Math.max(...curves.flatMap(({ points }) => points.map(({ y }) => y)));
  const reach = Math.max(most, ...levels.filter((level) => level <= LEVEL_IN_VIEW * most));
  return roundedDomain({ from: 0, to: reach > 0 ? reach : 1 }, Y_TICKS);
}

/** The taps at which any on-time gives the spark a noticeable energy, and the marked taps. */
function tapsInView({ points, mostEnergyTap }: EnergySweep, present: number): Domain {
  const taps = points.map((point) => point.tap);
  const [first, last] = [Math.min(...taps), Math.max(...taps)];
  const most = Math.max(...points.map((point) => point.sparkEnergy));
  const noticeable = points
    .filter((point) => point.sparkEnergy >= NOTICEABLE * most)
    .map((point) => point.tap);
  const inView = [...noticeable, mostEnergyTap ?? present, Math.min(Math.max(present, first), last)];
  return {
    from: Math.max(first, Math.min(...inView) - MARGIN),
    to: Math.min(last, Math.max(...inView) + MARGIN),
  };
}

function useFormat(dimension: Dimension, digits: number): (value: number) => string {
  const system = useUnitSystem();
  return (value) => withoutTrailingZeros(formatQuantity(value, dimension, system, digits).text);
}

function useCurrentLevels({ allowedCurrent }: EnergySweep): Level[] {
  const limit = useDesign((design) => design.drive.overCurrentLimit);
  const current = useFormat("current", 3);
  return [
    {
      id: "limit",
      label: `Over-current limit ${current(limit)}`,
      colour: "--error",
      y: limit,
      dash: "9 3 2 3",
    },
    {
      id: "rating",
      label: `Rating of switches and bank ${current(allowedCurrent)}`,
      colour: "--warning",
      y: allowedCurrent,
      dash: "4 3",
    },
  ];
}

function useTapMarkers({ mostEnergyTap }: EnergySweep): Marker[] {
  const tap = useDesign((design) => design.primary.tap);
  const best: Marker[] =
    mostEnergyTap === null ? [] : [{ id: "best", label: "Most energy", colour: "--ok", x: mostEnergyTap }];
  return [...best, { id: "present", label: "Present tap", colour: "--tap", x: tap }];
}

function EnergyCharts({ sweep }: { sweep: EnergySweep }) {
  const [time, energy, current] = [useFormat("time", 3), useFormat("energy", 3), useFormat("current", 3)];
  const energies = energyCurves(sweep, (point) => point.sparkEnergy, time);
  const currents = energyCurves(sweep, (point) => point.peakPrimaryCurrent, time);
  const [levels, markers] = [useCurrentLevels(sweep), useTapMarkers(sweep)];
  const tap = useDesign((design) => design.primary.tap);
  const x = {
    label: "tap, turns from the start",
    domain: tapsInView(sweep, tap),
    format: (value: number) => withoutTrailingZeros(value.toFixed(2)),
  };
  const shared = { x, markers, onPlace: dragTap };
  return (
    <>
      <Chart
        {...shared}
        title="Energy into the spark"
        y={{
          label: "per burst, at each on-time",
          domain: domainOf(energies),
          format: energy,
          everyTick: true,
        }}
        curves={energies}
      />
      <Chart
        {...shared}
        title="Peak primary current"
        y={{
          label: "per burst, at each on-time",
          domain: domainOf(
            currents,
            levels.map(({ y }) => y),
          ),
          format: current,
          everyTick: true,
        }}
        curves={currents}
        levels={levels}
        height={CURRENT_HEIGHT}
      />
    </>
  );
}

/** The best tap, with a button to use it. */
function BestTap({ sweep }: { sweep: EnergySweep }) {
  const design = useDesign((each) => each);
  const [energy, current, turns] = [useFormat("energy", 3), useFormat("current", 3), useFormat("turns", 4)];
  const { points, onTime, mostEnergyTap, leastBeside, beside } = sweep;
  const best = points.find((point) => point.onTime === onTime && point.tap === mostEnergyTap);
  if (!best) return <span>{whyNoEnergy(design)}.</span>;
  return (
    <>
      <span className={styles.figure}>
        Most energy: {energy(best.sparkEnergy)} at {turns(best.tap)}, {current(best.peakPrimaryCurrent)} peak
        {leastBeside !== null && `; at least ${energy(leastBeside)} within ±${turns(beside)}`}
      </span>
      <Button
        disabled={
          Math.abs(best.tap - design.primary.tap) < SAME_TAP && design.tuningAim.kind === "most energy"
        }
        onClick={() => applyTap(best.tap, "use tap with most energy", { kind: "most energy" })}
      >
        Use this tap
      </Button>
    </>
  );
}

/** The sweep's progress, why it is missing, or its result. */
function SweepStatus() {
  const { sweep, swept, stale, sweeping } = useEnergySweep((state) => state);
  if (sweeping)
    return (
      <div className={styles.status}>
        <FollowedProgress
          store={energySweeps.progress}
          label="Sweep of bursts"
          onCancel={energySweeps.cancel}
        >
          <span>Sweeping bursts …</span>
        </FollowedProgress>
      </div>
    );
  if (!swept || stale)
    return (
      <div className={styles.status} role="status">
        <span>{swept ? "These curves are out of date." : "Not computed yet."}</span>
        <Button onClick={energySweeps.again}>Compute again</Button>
      </div>
    );
  return (
    <div className={styles.status} role="status">
      {sweep ? (
        <BestTap sweep={sweep} />
      ) : (
        <span>The sweep cannot be computed because the coil has no solution; see the findings.</span>
      )}
    </div>
  );
}

/** Bursts against the tap: the energy into the spark and the peak primary current. */
export function EnergySweepChart() {
  const { sweep, stale } = useEnergySweep(({ sweep, stale }) => ({ sweep, stale }), true);
  return (
    <>
      <SweepStatus />
      {sweep && sweep.points.length > 0 && (
        <div className={stale ? styles.stale : undefined}>
          <EnergyCharts sweep={sweep} />
        </div>
      )}
    </>
  );
}
