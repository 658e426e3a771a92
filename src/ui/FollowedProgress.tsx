import type { ReactNode } from "react";
import { useStore } from "zustand";
import type { StoreApi } from "zustand/vanilla";
import { Progress } from "./Progress";

interface FollowedProgressProps {
  /** `shown` once it has taken so long that it is worth a word; `done` 0 … 1, null where it is not known */
  store: StoreApi<{ shown: boolean; done: number | null }>;
  label: string;
  onCancel: () => void;
  /** in its place until then, as long as something is under way */
  children?: ReactNode;
}

/** The progress that a store tells: it alone is drawn again as that goes on. */
export function FollowedProgress({ store, label, onCancel, children }: FollowedProgressProps) {
  const { shown, done } = useStore(store);
  return shown ? <Progress label={label} value={done} onCancel={onCancel} after={0} /> : children;
}
