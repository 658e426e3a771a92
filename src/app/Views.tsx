import { useState } from "react";
import { lazyPart } from "../ui/lazyPart";
import { Tabs } from "../ui/Tabs";

const Tuning = lazyPart(() => import("../charts/Tuning"), "Tuning", "tuning chart");
const ResponseChart = lazyPart(() => import("../charts/ResponseChart"), "ResponseChart", "response chart");
const ResponseResults = lazyPart(
  () => import("../panels/losses/ResponseResults"),
  "ResponseResults",
  "response results",
);
const LossBars = lazyPart(() => import("../panels/losses/LossBars"), "LossBars", "losses");
const BurstChart = lazyPart(() => import("../charts/BurstChart"), "BurstChart", "burst chart");
const BurstResults = lazyPart(() => import("../panels/burst/BurstResults"), "BurstResults", "burst results");
const EnergyPicture = lazyPart(
  () => import("../panels/burst/EnergyPicture"),
  "EnergyPicture",
  "energy balance",
);
const LineUp = lazyPart(() => import("../panels/lineUp/LineUp"), "LineUp", "line-up");
const Score = lazyPart(() => import("../panels/score/Score"), "Score", "score");

const charts = (
  <>
    <Tuning />
    <ResponseChart />
    <ResponseResults />
    <LossBars />
  </>
);

const burst = (
  <>
    <BurstChart />
    <BurstResults />
    <EnergyPicture />
  </>
);

export const viewTabs = [
  { id: "charts", label: "Charts", content: charts },
  { id: "burst", label: "Burst", content: burst },
  { id: "line-up", label: "Line-up", content: <LineUp /> },
  { id: "score", label: "Score", content: <Score /> },
];

/** Tabs with charts, burst, line-up and score; only the selected one is mounted. */
export function Views() {
  const [chosen, setChosen] = useState("charts");
  return <Tabs name="Results" tabs={viewTabs} chosen={chosen} onChoose={setChosen} />;
}
