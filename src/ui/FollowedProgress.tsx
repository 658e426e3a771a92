import type { ReactNode } from "react";
import { useStore } from "zustand";
import type { StoreApi } from "zustand/vanilla";
import { Progress } from "./Progress";

interface FollowedProgressProps {
  /** `shown` once it takes noticeably long; `done` 0 … 1, null if unknown */
  store: StoreApi<{ shown: boolean; done: number | null }>;
  label: string;
  onCancel: () => void;
  /** shown instead until then */
  children?: ReactNode;
}

/** Progress bound to a store, so that an update renders this component alone. */
export function FollowedProgress({ store, label, onCancel, children }: FollowedProgressProps) {
  const { shown, done } = useStore(store);
  return shown ? <Progress label={label} value={done} onCancel={onCancel} after={0} /> : children;
}
