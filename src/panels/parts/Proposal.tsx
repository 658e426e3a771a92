import { Button } from "../../ui/Button";
import styles from "./Proposal.module.css";

interface ProposalProps {
  /** one sentence: what is proposed and why */
  children: string;
  /** the button's label */
  apply: string;
  /** the design already is as proposed */
  applied: boolean;
  /** cannot be applied now */
  disabled?: boolean;
  onApply: () => void;
}

/** A computed proposal below the fields that it would change, with a button that applies it. */
export function Proposal({ children, apply, applied, disabled = false, onApply }: ProposalProps) {
  return (
    <div className={styles.proposal}>
      <p className={styles.text}>{children}</p>
      <Button disabled={applied || disabled} onClick={onApply}>
        {applied ? "As proposed" : apply}
      </Button>
    </div>
  );
}
