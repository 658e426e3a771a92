import { useContext, useEffect, useRef, useState } from "react";
import { Button } from "./Button";
import { ContainmentContext, PartNotLoaded } from "./containment";
import styles from "./Failed.module.css";
import { Icon } from "./Icon";

function reason(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const cause = error.cause === undefined ? "" : `\nbecause of ${reason(error.cause)}`;
  return `${error.stack ?? `${error.name}: ${error.message}`}${cause}`;
}

/** What is worth passing on of a failure, as plain text. */
function failureReport(sentence: string, error: unknown, account: string): string {
  return [sentence, reason(error), account].filter((part) => part !== "").join("\n\n");
}

interface FailedProps {
  what: string;
  inLine: boolean;
  error: unknown;
  retry: () => void;
}

/** ms that what changed must stand still before the part is tried again */
const SETTLED = 150;

/** Tries again when what is shown has changed, or for a part that did not come, when the network is back. */
function useTryingAgain(notLoaded: boolean, retry: () => void) {
  const { onChange } = useContext(ContainmentContext);
  const latest = useRef(retry);
  latest.current = retry;
  useEffect(() => {
    if (notLoaded) {
      const online = () => latest.current();
      window.addEventListener("online", online);
      return () => window.removeEventListener("online", online);
    }
    let timer: ReturnType<typeof setTimeout> | undefined;
    const end = onChange(() => {
      clearTimeout(timer);
      timer = setTimeout(() => latest.current(), SETTLED);
    });
    return () => {
      clearTimeout(timer);
      end();
    };
  }, [notLoaded, onChange]);
}

/** Stands in the place of a part that failed: what it is, another try, and a report to pass on. */
export function Failed({ what, inLine, error, retry }: FailedProps) {
  const { account } = useContext(ContainmentContext);
  const [copied, setCopied] = useState<"not yet" | "copied" | "refused">("not yet");
  const notLoaded = error instanceof PartNotLoaded;
  useTryingAgain(notLoaded, retry);
  const sentence = `The ${what} could not be ${notLoaded ? "loaded" : "shown"}.`;
  const report = () => failureReport(sentence, error, account());
  const copy = () =>
    (navigator.clipboard?.writeText(report()) ?? Promise.reject()).then(
      () => setCopied("copied"),
      () => setCopied("refused"),
    );
  return (
    <div className={inLine ? styles.line : styles.failed}>
      <p role="alert" className={styles.sentence}>
        <Icon name="warning" />
        {sentence}
      </p>
      {!inLine && notLoaded && (
        <p className={styles.rest}>
          The network may be away, or a newer version stand on the server. Loading the page anew keeps what is
          open.
        </p>
      )}
      <p className={styles.ways}>
        <Button onClick={retry}>Retry</Button>
        {notLoaded && <Button onClick={() => window.location.reload()}>Load the page anew</Button>}
        <Button kind="bare" onClick={() => void copy()}>
          {copied === "copied" ? "Report copied" : "Copy report"}
        </Button>
      </p>
      {!inLine && <Report text={report} refused={copied === "refused"} />}
    </div>
  );
}

/** The report for selecting by hand; made when it is looked at. */
function Report({ text, refused }: { text: () => string; refused: boolean }) {
  const [open, setOpen] = useState(false);
  const shown = open || refused;
  return (
    <details
      className={styles.report}
      open={shown}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>{refused ? "The clipboard is refused here: copy the report by hand" : "Report"}</summary>
      {shown && <textarea readOnly rows={8} aria-label="Report" spellCheck={false} value={text()} />}
    </details>
  );
}
