import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import { AimGroup } from "./AimGroup";

const AIM = ["tuning.targetResonance", "tuning.suggestedTap", "response.lowerPole", "response.upperPole"];

const BURST = [
  "burst.peakPrimaryCurrent",
  "burst.peakTopVoltage",
  "burst.energy.spark",
  "burst.runningFrequency",
  "burst.limitTrips",
  "burst.firstBeatMinimum",
  "burst.peakBaseCurrent",
  "drive.duty",
  "burst.windingGradient",
  "burst.gapField",
];

/** The tuning aim, the spark, the interrupter and the results of one burst. */
export function DrivePanel() {
  return (
    <Panel title="Drive">
      <AimGroup />
      <Results ids={AIM} />
      <Group title="Spark">
        <DesignField path="spark.length" />
        <DesignField path="spark.capacitancePerLength" />
        <DesignField path="spark.resistance" />
        <DesignField path="spark.topology" />
        <DesignField path="spark.growth" />
        <DesignField path="spark.growthRate" />
      </Group>
      <Group title="Bridge and interrupter">
        <DesignField path="drive.bridge" />
        <DesignField path="interrupter.onTime" />
        <DesignField path="interrupter.repetitionRate" />
        <DesignField path="interrupter.longestOnTime" />
        <DesignField path="interrupter.shortestGap" />
        <DesignField path="interrupter.dutyLimit" />
        <DesignField path="interrupter.dutyWindow" wide />
      </Group>
      <Results ids={BURST} />
    </Panel>
  );
}
