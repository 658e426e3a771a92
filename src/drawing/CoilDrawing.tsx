import type { ReactNode } from "react";
import type { ProfilePoint } from "../calc/coil/modeProfile";
import type { Room } from "../calc/design-parts";
import type { UnitSystem } from "../units/unitSystem";
import { type CoilShape, windingRadius } from "./coilShape";
import { Dimensions } from "./Dimensions";
import styles from "./Drawing.module.css";
import { Ground } from "./Ground";
import { PrimaryShape } from "./PrimaryShape";
import { ProfileCurves } from "./ProfileCurves";
import { RoomShape } from "./RoomShape";
import { TopLoadShape } from "./TopLoadShape";
import { type View, xOf } from "./view";
import { Winding } from "./Winding";

interface CoilDrawingProps {
  view: View;
  /** the true sizes, for the dimension texts */
  shape: CoilShape;
  /** the same with every size limited to what can be drawn */
  drawn: CoilShape;
  system: UnitSystem;
  /** drawn where it is in view */
  room?: Room;
  /** null draws no curves beside the winding */
  profile: readonly ProfilePoint[] | null;
  label: string;
  /** drag handles, on top of the drawing */
  children?: ReactNode;
}

const PROFILE_WIDTH = 52;
const PROFILE_GAP = 10;

/** The cross-section to scale, for the screen and for paper. */
export function CoilDrawing({
  view,
  shape,
  drawn,
  system,
  room,
  profile,
  label,
  children,
}: CoilDrawingProps) {
  const beside = xOf(view, windingRadius(drawn.secondary)) + PROFILE_GAP;
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${view.width} ${view.height}`}
      role={children ? "group" : "img"}
      aria-label={label}
    >
      <Ground view={view} />
      {room && <RoomShape view={view} room={room} />}
      <path className={styles.axis} d={`M${view.axis} ${view.ground + 14}V6`} />
      <Winding view={view} secondary={drawn.secondary} />
      <TopLoadShape view={view} topLoad={drawn.topLoad} />
      <PrimaryShape view={view} primary={drawn.primary} />
      {profile && <ProfileCurves view={view} profile={profile} from={beside} width={PROFILE_WIDTH} />}
      <Dimensions view={view} shape={shape} drawn={drawn} system={system} />
      {children}
    </svg>
  );
}
