import type { TortureRow } from "./row";
import { kills } from "./rows/kills";

/** Every row, in the order in which they run. */
export const ALL_ROWS: readonly TortureRow[] = [kills];
