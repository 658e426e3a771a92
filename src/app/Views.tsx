import { lazy, Suspense, useState } from "react";
import { Tabs } from "../ui/Tabs";
import { Waiting } from "./Waiting";

const Tuning = lazy(async () => ({ default: (await import("../charts/Tuning")).Tuning }));
const ResponseChart = lazy(async () => ({
  default: (await import("../charts/ResponseChart")).ResponseChart,
}));
const ResponseResults = lazy(async () => ({
  default: (await import("../panels/losses/ResponseResults")).ResponseResults,
}));
const LossBars = lazy(async () => ({ default: (await import("../panels/losses/LossBars")).LossBars }));
const BurstChart = lazy(async () => ({ default: (await import("../charts/BurstChart")).BurstChart }));
const BurstResults = lazy(async () => ({
  default: (await import("../panels/burst/BurstResults")).BurstResults,
}));
const EnergyPicture = lazy(async () => ({
  default: (await import("../panels/burst/EnergyPicture")).EnergyPicture,
}));
const LineUp = lazy(async () => ({ default: (await import("../panels/lineUp/LineUp")).LineUp }));
const Score = lazy(async () => ({ default: (await import("../panels/score/Score")).Score }));

const charts = (
  <Suspense fallback={<Waiting what="charts" />}>
    <Tuning />
    <ResponseChart />
    <ResponseResults />
    <LossBars />
  </Suspense>
);

const burst = (
  <Suspense fallback={<Waiting what="burst" />}>
    <BurstChart />
    <BurstResults />
    <EnergyPicture />
  </Suspense>
);

const lineUp = (
  <Suspense fallback={<Waiting what="line-up" />}>
    <LineUp />
  </Suspense>
);

const score = (
  <Suspense fallback={<Waiting what="score" />}>
    <Score />
  </Suspense>
);

export const viewTabs = [
  { id: "charts", label: "Charts", content: charts },
  { id: "burst", label: "Burst", content: burst },
  { id: "line-up", label: "Line-up", content: lineUp },
  { id: "score", label: "Score", content: score },
];

/** Charts of the open design, or its top loads side by side; only the one in sight is kept alive. */
export function Views() {
  const [chosen, setChosen] = useState("charts");
  return <Tabs name="Results" tabs={viewTabs} chosen={chosen} onChoose={setChosen} />;
}
