import type { TortureRow } from "./row";
import { extremes, randomDesigns } from "./rows/anyDesign";
import { chunks } from "./rows/chunks";
import { documents } from "./rows/documents";
import { everyControl } from "./rows/everyControl";
import { fullOfVersions } from "./rows/fullOfVersions";
import { kills } from "./rows/kills";
import { numberFields } from "./rows/numberFields";
import { properties } from "./rows/properties";
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
  numberFields,
  randomDesigns,
  extremes,
  documents,
  scoreFiles,
  properties,
];
