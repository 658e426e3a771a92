/** The actions of notices. */
import type { StoreApi } from "zustand/vanilla";
import { recordStep } from "../session/history";
import { type WayOut, withoutNotice } from "../session/notice";
import type { WorkbenchState } from "../session/workbenchState";
import type { Keeper } from "./keeper";
import type { Saving } from "./saving";

export interface WaysOutNeeds {
  store: StoreApi<WorkbenchState>;
  keeper: Keeper;
  saving: Saving;
  undo(): void;
}

const UNREADABLE_OTHER = "The other tab's saved show cannot be read here: export the show of this tab.";

async function takeOther({ store, keeper, saving }: WaysOutNeeds): Promise<void> {
  const show = await keeper.takeOther();
  if (!show) {
    store.setState({ saveState: "unsaved", saveMessage: keeper.heldBecause() ?? UNREADABLE_OTHER });
    return;
  }
  saving.adoptAsSaved(show);
  const { history, gesture } = store.getState();
  const before = gesture?.before ?? history.present;
  store.setState({ history: recordStep(history, "use the other tab's state", before, show), gesture: null });
}

async function startAfresh({ store, keeper, saving }: WaysOutNeeds): Promise<void> {
  const sentence = await keeper.startAfresh();
  if (sentence !== null) {
    store.setState({ saveState: "failed", saveMessage: sentence });
    return;
  }
  store.setState({ readOnly: null });
  await saving.saveNow();
}

async function discardStored({ keeper, saving }: WaysOutNeeds): Promise<void> {
  keeper.discardStored();
  await saving.saveNow();
}

type Way = (needs: WaysOutNeeds) => Promise<void>;

/** All other actions are handled by the notice's source, or export a file, which the screen does. */
const WAYS: Partial<Record<WayOut, Way>> = {
  "start afresh": startAfresh,
  "discard what is kept": discardStored,
  "take the other": takeOther,
  "keep this": startAfresh,
  "save again": ({ saving }) => saving.saveNow(),
  "take back the last change": async ({ undo }) => undo(),
};

const EXPORTS: readonly WayOut[] = ["export what is kept", "export the show"];

/** Runs an action of a notice and closes the notice, unless the action only exports a file. */
export async function takeWayOut(needs: WaysOutNeeds, noticeId: string, wayOut: WayOut): Promise<void> {
  if (EXPORTS.includes(wayOut)) return;
  const notice = needs.store.getState().notices.find(({ id }) => id === noticeId);
  needs.store.setState(({ notices }) => ({ notices: withoutNotice(notices, noticeId) }));
  const done = WAYS[wayOut]?.(needs);
  notice?.acts?.[wayOut]?.();
  await done;
}
