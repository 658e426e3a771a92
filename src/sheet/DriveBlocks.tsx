import { useDesign } from "../workbench/session/hooks";
import { Block } from "./Block";
import { FieldRow, ResultRow, Row } from "./Rows";

/** The drive's settings and the results of one burst, for the bench. */
export function DriveBlocks() {
  const mode = useDesign(({ drive }) => drive.commutation.mode);
  const action = useDesign(({ drive }) => drive.overCurrentAction);
  const arrangement = useDesign(({ drive }) => `${drive.supply.arrangement}, ${drive.bridge} bridge`);
  const turns = useDesign(({ drive }) => drive.currentTransformer.turns.join(" × "));
  return (
    <>
      <Block title="One burst">
        <dl>
          <FieldRow path="interrupter.onTime" />
          <FieldRow path="interrupter.repetitionRate" />
          <ResultRow id="burst.peakPrimaryCurrent" />
          <ResultRow id="burst.peakTopVoltage" />
          <ResultRow id="burst.runningFrequency" />
          <ResultRow id="burst.energy.spark" />
          <ResultRow id="tank.unitPeakVoltage" />
          <ResultRow id="tank.unitPeakCurrent" />
          <ResultRow id="tank.unitRmsCurrent" />
        </dl>
      </Block>
      <Block title="Switches and limit">
        <dl>
          <Row label="Commutation" text={mode} />
          <FieldRow path="drive.commutation.leadTime" />
          <FieldRow path="drive.commutation.deadTime" />
          <FieldRow path="drive.overCurrentLimit" />
          <Row label="Limit action" text={action.replace("end ", "ends the ")} />
          <Row label="Transformer turns" text={turns} />
          <FieldRow path="drive.currentTransformer.burden" />
          <ResultRow id="drive.limitVoltageAtComparator" label="Comparator voltage at the limit" />
          <ResultRow id="drive.junctionTemperature" />
        </dl>
      </Block>
      <Block title="Supply">
        <dl>
          <Row label="Arrangement" text={arrangement} />
          <ResultRow id="drive.busVoltage" />
          <ResultRow id="drive.averagePower" />
          <ResultRow id="drive.mainsCurrent" />
          <ResultRow id="drive.fuseHint" label="Suggested fuse rating; a licensed person decides" />
          <FieldRow path="drive.reservoirCapacitance" />
          <FieldRow path="drive.supply.prechargeResistance" />
          <FieldRow path="drive.supply.dischargeResistance" />
          <ResultRow id="drive.dischargeTime" label="Time to 60 V after switching off; measure" />
        </dl>
      </Block>
    </>
  );
}
