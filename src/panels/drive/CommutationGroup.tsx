import { FollowedProgress } from "../../ui/FollowedProgress";
import { formatQuantity } from "../../units/format";
import { leadTask, useQuietLead } from "../../workbench/background/quietLead";
import { useDesign, useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Proposal } from "../parts/Proposal";
import { Results } from "../parts/Results";

const RESULTS = [
  "drive.commutationCurrent",
  "drive.turnOffEnergy",
  "drive.turnOffAdvance",
  "drive.leadAtZero",
  "drive.leadAcrossDeadTime",
  "drive.longestDeadTime",
];

const path = "drive.commutation.leadTime";
/** s that a lead is set in: what a trimmer can be set to. */
const STEP = 1e-8;

/** s, rounded up, so that what the lead has to span stays within it. */
function toStep(lead: number): number {
  return Number((Math.ceil(lead / STEP) * STEP).toPrecision(6));
}

/** The lead that lets the next pair come on at the current's zero. */
function LeadProposal() {
  const system = useUnitSystem();
  const present = useDesign((design) => design.drive.commutation.leadTime);
  const lead = useEvaluation(({ drive }) => drive?.leadAcrossDeadTime ?? null);
  if (lead === null) return null;
  const rounded = toStep(lead);
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

/** The lead that switches off least current over the whole burst, searched when it is asked for. */
function QuietLead() {
  const system = useUnitSystem();
  const design = useDesign((each) => each);
  const { found, state, search } = useQuietLead(design);
  if (design.drive.commutation.mode === "fixed frequency") return null;
  if (!found)
    return (
      <>
        <Proposal
          take={state === "searching" ? "Searching …" : "Search it"}
          taken={false}
          disabled={state === "searching"}
          onTake={search}
        >
          {state === "done"
            ? "No lead was found: there is no burst, or none spans delay and dead time."
            : "Of the leads that span the dead time, the one that switches off least current over whole bursts."}
        </Proposal>
        <FollowedProgress
          store={leadTask.progress}
          label="Search for the quietest lead"
          onCancel={leadTask.cancel}
        />
      </>
    );
  const lead = toStep(found.leadTime);
  const text = formatQuantity(lead, "time", system, 3).text;
  return (
    <Proposal
      take={`Take ${text}`}
      taken={Math.abs(design.drive.commutation.leadTime - lead) < STEP / 2}
      onTake={() => workbench.setValue(path, lead, "take the quietest lead time")}
    >
      {`Of the leads that span the dead time, ${text} switches off least over whole bursts: ${formatQuantity(found.turnOffCurrent, "current", system, 3).text} RMS. A shorter dead time lets it be less.`}
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
      <QuietLead />
    </>
  );
}
