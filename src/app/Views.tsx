import { Suspense, useState } from "react";
import { Tabs } from "../ui/Tabs";
import { lazyPart } from "./lazyPart";
import { Waiting } from "./Waiting";

const TuningChart = lazyPart(import.meta.glob("../charts/TuningChart.tsx"), "TuningChart");
const ResponseChart = lazyPart(import.meta.glob("../charts/ResponseChart.tsx"), "ResponseChart");
const LineUp = lazyPart(import.meta.glob("../panels/lineUp/LineUp.tsx"), "LineUp");

const charts = (
  <Suspense fallback={<Waiting what="charts" />}>
    <TuningChart />
    <ResponseChart />
  </Suspense>
);

const lineUp = (
  <Suspense fallback={<Waiting what="line-up" />}>
    <LineUp />
  </Suspense>
);

export const viewTabs = [
  { id: "charts", label: "Charts", content: charts },
  { id: "line-up", label: "Line-up", content: lineUp },
];

/** Charts of the open design, or its top loads side by side; only the one in sight is kept alive. */
export function Views() {
  const [chosen, setChosen] = useState("charts");
  return <Tabs name="Results" tabs={viewTabs} chosen={chosen} onChoose={setChosen} />;
}
