import { useRef, useState } from "react";
import { useHeld } from "../ui/useHeld";
import { useSize } from "../ui/useSize";
import { useDesign, useEvaluation, useSession, useUnitSystem } from "../workbench/session/hooks";
import { CoilDrawing } from "./CoilDrawing";
import { coilExtent } from "./coilShape";
import styles from "./Drawing.module.css";
import { drawnShape } from "./drawnShape";
import { ElementHandles, TapHandle } from "./Handles";
import { NotToScale } from "./NotToScale";
import { ScaleBar } from "./ScaleBar";
import { fitView } from "./view";

const WIDE = { side: 84, top: 48, bottom: 56 };
const NARROW = { side: 58, top: 40, bottom: 44 };
const NARROW_BELOW = 480;

/** The open design's coil, to scale; its tap and top load can be dragged. */
export function CrossSection() {
  const frame = useRef<HTMLDivElement>(null);
  const size = useSize(frame, { width: 640, height: 560 });
  const [profileShown, showProfile] = useState(true);
  const shape = useDesign(({ secondary, topLoad, primary }) => ({ secondary, topLoad, primary }));
  const room = useDesign((design) => design.room);
  const profile = useEvaluation((evaluation) => evaluation.secondary?.profile ?? null);
  const tuned = useEvaluation((evaluation) => evaluation.tuning?.tuned ?? false);
  const readOnly = useSession((view) => view.readOnly !== null);
  const gesture = useSession((view) => view.gesture !== null);
  const system = useUnitSystem();
  const margins = size.width < NARROW_BELOW ? NARROW : WIDE;
  const drawn = drawnShape(shape);
  const toScale = drawn.notToScale.length === 0;
  const view = useHeld(fitView(coilExtent(drawn.shape), size.width, size.height, margins), gesture);
  return (
    <div className={styles.frame} ref={frame}>
      <CoilDrawing
        view={view}
        shape={shape}
        drawn={drawn.shape}
        system={system}
        room={room}
        profile={profileShown && toScale ? profile : null}
        label={`Cross-section of the coil${toScale ? ", to scale" : ""}`}
      >
        <ScaleBar view={view} system={system} />
        {!readOnly && (
          <>
            {drawn.shape.topLoad.elements.map((element, index) => (
              <ElementHandles key={index} view={view} element={element} index={index} system={system} />
            ))}
            <TapHandle
              view={view}
              primary={drawn.shape.primary}
              tap={shape.primary.tap}
              system={system}
              tuned={tuned}
            />
          </>
        )}
      </CoilDrawing>
      <NotToScale names={drawn.notToScale} />
      {toScale && (
        <label className={styles.profileSwitch}>
          <input
            type="checkbox"
            checked={profileShown}
            onChange={(event) => showProfile(event.target.checked)}
          />
          <span>
            <span className={styles.voltageName}>Voltage</span> and{" "}
            <span className={styles.currentName}>current</span> on the winding
          </span>
        </label>
      )}
    </div>
  );
}
