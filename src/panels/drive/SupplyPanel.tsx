import { cautions } from "../../design/cautions";
import { Icon } from "../../ui/Icon";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import { Results } from "../parts/Results";
import styles from "./Caution.module.css";

/** One of the cautions, shown where it applies. */
function Caution({ code }: { code: string }) {
  const caution = cautions.find((each) => each.code === code);
  if (!caution) throw new Error(`no caution has the code “${code}”`);
  return (
    <p className={styles.caution}>
      <Icon name="warning" />
      <span>
        <strong>{caution.title}.</strong> {caution.sentence}
      </span>
    </p>
  );
}

const SUPPLY = [
  "drive.busVoltage",
  "drive.averagePower",
  "drive.meanBusVoltage",
  "drive.lowestBusVoltage",
  "drive.busRipple",
  "burst.reservoirSag",
  "drive.mainsCurrent",
  "drive.apparentPower",
  "drive.powerFactor",
  "drive.chargingCurrent",
  "drive.reservoirRmsCurrent",
  "drive.fuseHint",
];

const SWITCHING_ON_AND_OFF = [
  "drive.inrushCurrent",
  "drive.prechargeCurrent",
  "drive.prechargeTime",
  "drive.prechargeEnergy",
  "drive.reservoirEnergy",
  "drive.dischargePower",
  "drive.dischargeTime",
];

/** From the mains to the bus: the supply and its load on the mains circuit. */
export function SupplyPanel() {
  return (
    <Panel title="Supply">
      <Group title="Mains and rectifier">
        <DesignField path="drive.supply.arrangement" wide />
        <DesignField path="drive.supply.mainsVoltage" />
        <DesignField path="drive.supply.mainsFrequency" />
        <DesignField path="drive.supply.sourceResistance" />
        <DesignField path="drive.supply.sourceInductance" />
        <DesignField path="drive.supply.circuitCurrent" wide />
      </Group>
      <Group title="Reservoir">
        <DesignField path="drive.reservoirCapacitance" />
        <DesignField path="drive.reservoirSeriesResistance" />
      </Group>
      <Results ids={SUPPLY} />
      <Group title="Switching on and off">
        <DesignField path="drive.supply.prechargeResistance" />
        <DesignField path="drive.supply.dischargeResistance" />
      </Group>
      <Results ids={SWITCHING_ON_AND_OFF} />
      <Caution code="lethal-voltage" />
      <Caution code="stored-energy" />
    </Panel>
  );
}
