import { Button } from "../../ui/Button";

interface NotThereProps {
  /** within a sentence, as in “the pair” */
  what: string;
  computing: boolean;
  again: () => void;
}

/** In place of a result that is being computed, or that came to nothing. */
export function NotThere({ what, computing, again }: NotThereProps) {
  if (computing) return <p role="status">Computing {what} …</p>;
  return (
    <p role="status">
      There is no result for {what}: it was given up, or a notice says why.{" "}
      <Button onClick={again}>Compute again</Button>
    </p>
  );
}
