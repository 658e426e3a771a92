import { memo } from "react";
import { keyName } from "../../calc/music/equalTemperament";
import type { Lane } from "../../calc/music/lane";
import { laneFields } from "../../fields/showFields";
import type { PartOutline } from "../../workbench/background/scoreReadingJob";
import { workbench } from "../../workbench/session/session";
import styles from "./Score.module.css";
import { ScoreQuantity } from "./ScoreQuantity";

function changeLane(part: string, label: string, change: Partial<Lane>, run?: string): void {
  const lanesOf = (lanes: Lane[]) =>
    lanes.map((lane) => (lane.part === part ? { ...lane, ...change } : lane));
  workbench.editShow(label, (show) => ({ ...show, lanes: lanesOf(show.lanes) }), run);
}

const COILS: Lane["coil"][] = ["left", "right", "both", "none"];

function LaneRow({ part, lane }: { part: PartOutline; lane: Lane }) {
  const { range, polyphony } = part;
  const name = part.name || `Track ${part.track}`;
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
            if (coil) changeLane(part.id, `Destination of ${name}`, { coil });
          }}
        >
          {COILS.map((coil) => (
            <option key={coil}>{coil}</option>
          ))}
        </select>
      </td>
      <td>
        <ScoreQuantity
          bare
          field={laneFields.transpose}
          path={`lanes.${part.id}.transpose`}
          label={`Transposition of ${name} in semitones`}
          value={lane.transpose}
          onCommit={(transpose, run) => changeLane(part.id, `Transposition of ${name}`, { transpose }, run)}
        />
      </td>
      <td>
        <ScoreQuantity
          bare
          field={laneFields.level}
          path={`lanes.${part.id}.level`}
          label={`Level of ${name}`}
          value={lane.level}
          onCommit={(level, run) => changeLane(part.id, `Level of ${name}`, { level }, run)}
        />
      </td>
    </tr>
  );
}

/** The parts of the score and the coil that plays each. */
export const LanesTable = memo(({ parts, lanes }: { parts: readonly PartOutline[]; lanes: Lane[] }) => {
  return (
    <div className={styles.scroll}>
      <table className={styles.lanes}>
        <thead>
          <tr>
            {["Part", "Channel", "Range", "Polyphony", "Coil", "Transpose", "Level"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {parts.map((part) => {
            const lane = lanes.find((candidate) => candidate.part === part.id);
            return lane && <LaneRow key={part.id} part={part} lane={lane} />;
          })}
        </tbody>
      </table>
    </div>
  );
});
