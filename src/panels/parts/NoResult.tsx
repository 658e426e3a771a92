import { Button } from "../../ui/Button";

interface NoResultProps {
  /** as used within a sentence, such as “the pair” */
  what: string;
  computing: boolean;
  again: () => void;
}

/** Shown in place of a result that is being computed, was cancelled or failed. */
export function NoResult({ what, computing, again }: NoResultProps) {
  if (computing) return <p role="status">Computing {what} …</p>;
  return (
    <p role="status">
      There is no result for {what}: it was cancelled or failed; see the notices.{" "}
      <Button onClick={again}>Compute again</Button>
    </p>
  );
}
