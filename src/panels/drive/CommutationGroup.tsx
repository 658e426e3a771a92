import { formatQuantity } from "../../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../../workbench/hooks";
import { workbench } from "../../workbench/session";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Proposal } from "../parts/Proposal";
import { Results } from "../parts/Results";

const RESULTS = [
  "drive.turnOffCurrent",
  "drive.turnOffEnergy",
  "drive.leadAtZero",
  "drive.leadAcrossDeadTime",
  "drive.longestDeadTime",
];

const path = "drive.commutation.leadTime";
/** s that a lead is set in: what a trimmer can be set to. */
const STEP = 1e-8;

/** The lead that lets the next pair come on at the current's zero, rounded up so that the dead time stays within it. */
function LeadProposal() {
  const system = useUnitSystem();
  const present = useDesign((design) => design.drive.commutation.leadTime);
  const lead = useEvaluation(({ drive }) => drive?.leadAcrossDeadTime ?? null);
  if (lead === null) return null;
  const rounded = Number((Math.ceil(lead / STEP) * STEP).toPrecision(6));
  const text = formatQuantity(rounded, "time", system, 3).text;
  return (
    <Proposal
      take={`Take ${text}`}
      taken={Math.abs(present - rounded) < STEP / 2}
      onTake={() => workbench.setValue(path, rounded, "take the proposed lead time")}
    >
      {`A lead time of ${text} lets the next pair come on just at the current's zero, with this delay and dead time.`}
    </Proposal>
  );
}

/** What turns the bridge over, and how well it does. */
export function CommutationGroup() {
  return (
    <>
      <Group title="Commutation">
        <DesignField path="drive.commutation.mode" />
        <DesignField path="drive.commutation.frequency" />
        <DesignField path={path} />
        <DesignField path="drive.commutation.delay" />
        <DesignField path="drive.commutation.deadTime" wide />
      </Group>
      <Results ids={RESULTS} />
      <LeadProposal />
    </>
  );
}
