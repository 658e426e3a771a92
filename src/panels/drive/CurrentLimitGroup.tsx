import { formatQuantity } from "../../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Proposal } from "../parts/Proposal";
import { Results } from "../parts/Results";

/** The current transformer: one number of turns, or two for a cascade. */
function TransformerGroup() {
  const count = useDesign((design) => design.drive.currentTransformer.turns.length);
  return (
    <Group title="Current transformer">
      {Array.from({ length: count }, (_, index) => (
        <DesignField key={index} path={`drive.currentTransformer.turns.${index}`} wide={count === 1} />
      ))}
      <DesignField path="drive.currentTransformer.burden" />
      <DesignField path="drive.currentTransformer.comparatorVoltage" />
      <DesignField path="drive.currentTransformer.coreArea" />
      <DesignField path="drive.currentTransformer.saturationFluxDensity" />
    </Group>
  );
}

const RESULTS = [
  "drive.limitVoltageAtComparator",
  "drive.peakVoltageAtComparator",
  "drive.transformerRatio",
  "drive.burdenPower",
  "drive.coreFluxDensity",
];

/** Precision to which a reference can be trimmed. */
const LEVEL_DIGITS = 3;

function same(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((value, index) => value === b[index]);
}

/** Proposes turns, burden and level for the wanted limit. */
function ChainProposal() {
  const system = useUnitSystem();
  const present = useDesign((design) => design.drive.currentTransformer);
  const proposal = useEvaluation(({ drive }) => drive?.senseProposal ?? null);
  if (!proposal) return null;
  const { turns, burden } = proposal;
  const comparatorVoltage = Number(proposal.comparatorVoltage.toPrecision(LEVEL_DIGITS));
  const resistance = formatQuantity(burden, "resistance", system, 3).text;
  const level = formatQuantity(comparatorVoltage, "voltage", system, 3).text;
  const count = turns.length === 1 ? `${turns[0]} turns` : `two in cascade of ${turns.join(" and ")} turns`;
  return (
    <Proposal
      apply="Use proposal"
      applied={
        same(turns, present.turns) &&
        burden === present.burden &&
        comparatorVoltage === present.comparatorVoltage
      }
      onApply={() =>
        workbench.setValue(
          "drive.currentTransformer",
          { ...present, turns, burden, comparatorVoltage },
          "use the proposed current transformer",
        )
      }
    >
      {`For this limit: ${count}, a burden of ${resistance}, and the comparator at ${level}.`}
    </Proposal>
  );
}

/** The over-current limit: its settings, results and a proposal. */
export function CurrentLimitGroup() {
  return (
    <>
      <Group title="Over-current">
        <DesignField path="drive.overCurrentLimit" />
        <DesignField path="drive.overCurrentAction" />
      </Group>
      <TransformerGroup />
      <Results ids={RESULTS} />
      <ChainProposal />
    </>
  );
}
