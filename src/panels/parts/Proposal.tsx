import { Button } from "../../ui/Button";
import styles from "./Proposal.module.css";

interface ProposalProps {
  /** what is proposed and why, a sentence */
  children: string;
  /** on the button */
  take: string;
  /** already as proposed */
  taken: boolean;
  /** cannot be taken just now */
  disabled?: boolean;
  onTake: () => void;
}

/** A worked proposal under the fields that it would change, with the button that takes it. */
export function Proposal({ children, take, taken, disabled = false, onTake }: ProposalProps) {
  return (
    <div className={styles.proposal}>
      <p className={styles.text}>{children}</p>
      <Button disabled={taken || disabled} onClick={onTake}>
        {taken ? "As proposed" : take}
      </Button>
    </div>
  );
}
