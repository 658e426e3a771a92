/** Hooks that read the session; each subscribes only to the part that it selects. */
import { useEffect } from "react";
import { useStore } from "zustand";
import { useShallow } from "zustand/react/shallow";
import type { Design } from "../../design/design";
import type { Show } from "../../design/show";
import type { Evaluation } from "../../evaluation/evaluation";
import type { UnitSystem } from "../../units/unitSystem";
import type { EnergyState } from "../background/energySession";
import { usePreferences } from "./preferences";
import { energySweeps, session } from "./session";
import { type SessionView, sessionView } from "./sessionView";
import { openDesignOf } from "./showEdits";

/** A part of the show. */
export function useShow<Part>(selector: (show: Show) => Part): Part {
  return useStore(
    session.store,
    useShallow((state) => selector(state.history.present)),
  );
}

/** A part of the open design. */
export function useDesign<Part>(selector: (design: Design) => Part): Part {
  return useStore(
    session.store,
    useShallow((state) => selector(openDesignOf(state.history.present))),
  );
}

/** A part of the open design's evaluation; groups are null before the first result. */
export function useEvaluation<Part>(selector: (evaluation: Evaluation) => Part): Part {
  return useStore(
    session.store,
    useShallow((state) => selector(state.evaluation)),
  );
}

/** A part of the session's own state: undo, gesture, saving, revisions, notices. */
export function useSession<Part>(selector: (view: SessionView) => Part): Part {
  return useStore(
    session.store,
    useShallow((state) => selector(sessionView(state))),
  );
}

/** Whether lengths are shown in metric or inch units. */
export function useUnitSystem(): UnitSystem {
  return usePreferences((preferences) => preferences.unitSystem);
}

/** The state of the sweep of bursts; all on-times are swept while `watched`. */
export function useEnergySweep<Part>(selector: (state: EnergyState) => Part, watched = false): Part {
  useEffect(() => (watched ? energySweeps.watch() : undefined), [watched]);
  return useStore(energySweeps.store, useShallow(selector));
}
