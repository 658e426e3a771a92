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
/** s, resolution of a trimmed lead time */
const STEP = 1e-8;

/** s, rounded up, so that the lead still covers what it must. */
function toStep(lead: number): number {
  return Number((Math.ceil(lead / STEP) * STEP).toPrecision(6));
}

/** Proposes the lead time at which the next switches turn on at the current's zero. */
function LeadProposal() {
  const system = useUnitSystem();
  const present = useDesign((design) => design.drive.commutation.leadTime);
  const lead = useEvaluation(({ drive }) => drive?.leadAcrossDeadTime ?? null);
  if (lead === null) return null;
  const rounded = toStep(lead);
  const text = formatQuantity(rounded, "time", system, 3).text;
  return (
    <Proposal
      apply={`Use ${text}`}
      applied={Math.abs(present - rounded) < STEP / 2}
      onApply={() => workbench.setValue(path, rounded, "use the proposed lead time")}
    >
      {`With this delay and dead time, a lead time of ${text} turns the next switches on at the current's zero.`}
    </Proposal>
  );
}

/** The lead time with the least turn-off current over the whole burst, searched on request. */
function QuietLead() {
  const system = useUnitSystem();
  const design = useDesign((each) => each);
  const { found, state, search } = useQuietLead(design);
  if (design.drive.commutation.mode === "fixed frequency") return null;
  if (!found)
    return (
      <>
        <Proposal
          apply={state === "searching" ? "Searching …" : "Search"}
          applied={false}
          disabled={state === "searching"}
          onApply={search}
        >
          {state === "done"
            ? "No lead time was found: there is no burst, or no lead time covers delay and dead time."
            : "Searches the lead times that cover the dead time for the least turn-off current over whole bursts."}
        </Proposal>
        <FollowedProgress
          store={leadTask.progress}
          label="Search for the lead time with the least turn-off current"
          onCancel={leadTask.cancel}
        />
      </>
    );
  const lead = toStep(found.leadTime);
  const text = formatQuantity(lead, "time", system, 3).text;
  return (
    <Proposal
      apply={`Use ${text}`}
      applied={Math.abs(design.drive.commutation.leadTime - lead) < STEP / 2}
      onApply={() => workbench.setValue(path, lead, "use the lead time with the least turn-off current")}
    >
      {`Of the lead times that cover the dead time, ${text} has the least turn-off current over whole bursts: ${formatQuantity(found.turnOffCurrent, "current", system, 3).text} RMS. A shorter dead time allows less.`}
    </Proposal>
  );
}

/** The commutation of the bridge: its settings, results and proposals. */
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
