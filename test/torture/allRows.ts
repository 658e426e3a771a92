import type { TortureRow } from "./row";
import { chunks } from "./rows/chunks";
import { documents } from "./rows/documents";
import { everyControl } from "./rows/everyControl";
import { fullOfVersions } from "./rows/fullOfVersions";
import { kills } from "./rows/kills";
import { scoreFiles } from "./rows/scoreFiles";
import { storageFaults } from "./rows/storageFaults";
import { twoTabs } from "./rows/twoTabs";
import { workers } from "./rows/workers";

/** Every row, in the order in which they run. */
export const ALL_ROWS: readonly TortureRow[] = [
  kills,
  storageFaults,
  fullOfVersions,
  twoTabs,
  chunks,
  everyControl,
  workers,
  documents,
  scoreFiles,
];
