import { useId, useRef } from "react";
import type { BurstOutcome } from "../../evaluation/burst/burstResults";
import { resultEntry } from "../../evaluation/register/register";
import { useSize } from "../../ui/useSize";
import { formatQuantity } from "../../units/format";
import { useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import styles from "./EnergyPicture.module.css";
import { bandPath, type EnergyFlow, energyFlow, type FlowBand } from "./energyFlow";
import { ENERGY_PARTS, type EnergyPart, type Hatch } from "./energyParts";

const LINES: Record<Hatch, string | null> = {
  solid: null,
  rising: "M-1 6L6 -1M0 11L11 0",
  crossed: "M0 5H5M5 0V5",
  dotted: "M1 2.5H3",
  open: null,
};
const SIZE: Partial<Record<Hatch, number>> = { rising: 5, crossed: 5, dotted: 5 };

/** The hatching of a part, so that parts can be distinguished without colour. */
function HatchPattern({ id, colour, hatch }: { id: string; colour: string; hatch: Hatch }) {
  const lines = LINES[hatch];
  const size = SIZE[hatch];
  if (!lines) return null;
  return (
    <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse">
      <path d={lines} stroke={`var(${colour})`} strokeWidth={1.2} fill="none" />
    </pattern>
  );
}

/** The fill of an element. */
function hatchFill(id: string, colour: string, hatch: Hatch): string {
  if (hatch === "solid") return `var(${colour})`;
  return hatch === "open" ? "none" : `url(#${id})`;
}

/** px */
const BAR = 9;
const LEAST_WIDTH = 84;
const MOST_WIDTH = 190;
const PART_OF_WIDTH = 0.3;
/** Shares of the supply below this are shown as “< 0.001 %”. */
const NEGLIGIBLE = 1e-5;

type EnergyBalance = BurstOutcome["energy"];

function partOf({ id }: FlowBand): EnergyPart {
  return ENERGY_PARTS.find((part) => part.id === id) ?? ENERGY_PARTS[0];
}

function shareText(share: number): string {
  return Math.abs(share) < NEGLIGIBLE ? "< 0.001\u202f%" : formatQuantity(share, "percent", "metric", 3).text;
}

function Flow({ flow, width }: { flow: EnergyFlow; width: number }) {
  const base = useId();
  const { supplyTop, supplyHeight, bands } = flow;
  return (
    <svg className={styles.flow} width={width} height={flow.height} aria-hidden="true">
      <rect x={0} y={supplyTop} width={BAR} height={supplyHeight} fill="var(--ink)" />
      {bands.map((band) => {
        const { colour, hatch } = partOf(band);
        const id = `${base}-${band.id}`;
        return (
          <g key={band.id}>
            <HatchPattern id={id} colour={colour} hatch={hatch} />
            <path
              d={bandPath(band, BAR + 1, width - 1)}
              fill={hatchFill(id, colour, hatch)}
              stroke={`var(${colour})`}
              strokeWidth={0.9}
            />
          </g>
        );
      })}
    </svg>
  );
}

function Label({ band }: { band: FlowBand }) {
  const { id, label, colour, hatch } = partOf(band);
  const pattern = useId();
  const system = useUnitSystem();
  return (
    <div
      className={styles.label}
      style={{ top: band.slotTop, height: band.slotHeight }}
      title={resultEntry(`burst.energy.${id}`).words}
    >
      <dt className={styles.name}>
        <svg className={styles.key} width={16} height={11} aria-hidden="true">
          <HatchPattern id={pattern} colour={colour} hatch={hatch} />
          <rect
            x={0.5}
            y={0.5}
            width={15}
            height={10}
            fill={hatchFill(pattern, colour, hatch)}
            stroke={`var(${colour})`}
          />
        </svg>
        {label}
      </dt>
      <dd className={styles.figure}>{formatQuantity(band.energy, "energy", system, 3).text}</dd>
      <dd className={styles.figure}>{shareText(band.share)}</dd>
    </div>
  );
}

/** The turn-off energy, which is not part of the balance, and the balance's error. */
function Balance({ energy }: { energy: EnergyBalance }) {
  const system = useUnitSystem();
  const amount = (value: number) =>
    `${formatQuantity(value, "energy", system, 3).text} (${shareText(value / energy.supplied)})`;
  return (
    <p className={styles.balance}>
      Turn-off loss of the switches, not included: <b>{amount(energy.turnOff)}</b>. Error of the balance:{" "}
      <b>{amount(Math.abs(energy.imbalance))}</b>.
    </p>
  );
}

function Picture({ energy }: { energy: EnergyBalance }) {
  const place = useRef<HTMLDivElement>(null);
  const system = useUnitSystem();
  const { width } = useSize(place, { width: 400, height: 250 });
  const parts = ENERGY_PARTS.map(({ id }) => ({ id, energy: energy[id] })).filter((part) => part.energy > 0);
  const flow = energyFlow(energy.supplied, parts);
  const flowWidth = Math.round(Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, PART_OF_WIDTH * width)));
  return (
    <>
      <p className={styles.supplied} title={resultEntry("burst.energy.supplied").words}>
        Supplied <b>{formatQuantity(energy.supplied, "energy", system, 4).text}</b>
      </p>
      <div className={styles.picture} ref={place} style={{ height: flow.height }}>
        <Flow flow={flow} width={flowWidth} />
        <dl className={styles.labels}>
          {flow.bands.map((band) => (
            <Label key={band.id} band={band} />
          ))}
        </dl>
      </div>
      <Balance energy={energy} />
    </>
  );
}

function PictureOrReason({ energy }: { energy: EnergyBalance | null }) {
  if (!energy)
    return (
      <p className={styles.none}>
        The energy cannot be computed because a circuit has no solution; see the findings.
      </p>
    );
  if (!(energy.supplied > 0))
    return (
      <p className={styles.none}>The burst takes no energy from the reservoir: the bridge is not driven.</p>
    );
  return <Picture energy={energy} />;
}

/** The energy balance of the burst as a flow diagram. */
export function EnergyPicture() {
  const energy = useEvaluation((evaluation) => evaluation.burst?.energy ?? null);
  return (
    <section className={styles.energy} aria-label="Energy of the burst">
      <h3 className={styles.title}>Energy balance of the burst</h3>
      <PictureOrReason energy={energy} />
    </section>
  );
}
