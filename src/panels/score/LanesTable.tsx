import { keyName } from "../../calc/music/equalTemperament";
import type { Lane } from "../../calc/music/lane";
import { partSummary } from "../../calc/music/partSummary";
import type { Score, ScorePart } from "../../calc/music/score";
import { workbench } from "../../workbench/session";
import styles from "./Score.module.css";

function changeLane(part: string, change: Partial<Lane>): void {
  workbench.editShow("Change lane", (show) => ({
    ...show,
    lanes: show.lanes.map((lane) => (lane.part === part ? { ...lane, ...change } : lane)),
  }));
}

const COILS: Lane["coil"][] = ["left", "right", "both", "none"];

function LaneRow({ part, lane }: { part: ScorePart; lane: Lane }) {
  const { range, polyphony } = partSummary(part);
  const name = part.name || `Track ${part.track}`;
  const whole = (value: number, change: (value: number) => Partial<Lane>, least: number, most: number) => {
    if (Number.isFinite(value))
      changeLane(part.id, change(Math.min(most, Math.max(least, Math.round(value)))));
  };
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{part.channel}</td>
      <td>{range ? `${keyName(range.lowest)} – ${keyName(range.highest)}` : "–"}</td>
      <td>{polyphony}</td>
      <td>
        <select
          aria-label={`Destination of ${name}`}
          value={lane.coil}
          onChange={(event) => {
            const coil = COILS.find((each) => each === event.target.value);
            if (coil) changeLane(part.id, { coil });
          }}
        >
          {COILS.map((coil) => (
            <option key={coil}>{coil}</option>
          ))}
        </select>
      </td>
      <td>
        <input
          type="number"
          aria-label={`Transposition of ${name} in semitones`}
          value={lane.transpose}
          min={-48}
          max={48}
          onChange={(event) => whole(event.target.valueAsNumber, (transpose) => ({ transpose }), -48, 48)}
        />
      </td>
      <td>
        <input
          type="number"
          aria-label={`Level of ${name} in per cent`}
          value={Math.round(lane.level * 100)}
          min={0}
          max={100}
          onChange={(event) =>
            whole(event.target.valueAsNumber, (percent) => ({ level: percent / 100 }), 0, 100)
          }
        />
      </td>
    </tr>
  );
}

/** The parts of the score and where each goes. */
export function LanesTable({ score, lanes }: { score: Score; lanes: Lane[] }) {
  return (
    <div className={styles.scroll}>
      <table className={styles.lanes}>
        <thead>
          <tr>
            {["Part", "Channel", "Range", "At once", "Coil", "Transpose", "Level %"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {score.parts.map((part) => {
            const lane = lanes.find((candidate) => candidate.part === part.id);
            return lane && <LaneRow key={part.id} part={part} lane={lane} />;
          })}
        </tbody>
      </table>
    </div>
  );
}
