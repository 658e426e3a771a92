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

/** The report of a failure as plain text. */
function failureReport(sentence: string, error: unknown, account: string): string {
  return [sentence, reason(error), account].filter((part) => part !== "").join("\n\n");
}

interface FailedProps {
  what: string;
  inLine: boolean;
  error: unknown;
  retry: () => void;
}

/** ms without a further change before the part is retried */
const RETRY_DELAY = 150;

/** Retries when the shown data have changed; a part that failed to load is retried when the network is back. */
function useAutomaticRetry(notLoaded: boolean, retry: () => void) {
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
      timer = setTimeout(() => latest.current(), RETRY_DELAY);
    });
    return () => {
      clearTimeout(timer);
      end();
    };
  }, [notLoaded, onChange]);
}

/** Replaces a part that failed: its name, a retry and a report to pass on. */
export function Failed({ what, inLine, error, retry }: FailedProps) {
  const { account } = useContext(ContainmentContext);
  const [copied, setCopied] = useState<"not yet" | "copied" | "refused">("not yet");
  const notLoaded = error instanceof PartNotLoaded;
  useAutomaticRetry(notLoaded, retry);
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
          The network may be down, or the server may have a newer version. Reloading the page keeps what is
          open.
        </p>
      )}
      <p className={styles.actions}>
        <Button onClick={retry}>Retry</Button>
        {notLoaded && <Button onClick={() => window.location.reload()}>Reload page</Button>}
        <Button kind="bare" onClick={() => void copy()}>
          {copied === "copied" ? "Report copied" : "Copy report"}
        </Button>
      </p>
      {!inLine && <Report text={report} refused={copied === "refused"} />}
    </div>
  );
}

/** The report as text to select by hand; built only when it is opened. */
function Report({ text, refused }: { text: () => string; refused: boolean }) {
  const [open, setOpen] = useState(false);
  const shown = open || refused;
  return (
    <details
      className={styles.report}
      open={shown}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        {refused ? "The browser denies access to the clipboard: copy the report by hand" : "Report"}
      </summary>
      {shown && <textarea readOnly rows={8} aria-label="Report" spellCheck={false} value={text()} />}
    </details>
  );
}
