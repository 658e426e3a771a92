import { Button } from "../ui/Button";
import { severityLabel } from "../ui/FindingList";
import { FollowedProgress } from "../ui/FollowedProgress";
import { Icon } from "../ui/Icon";
import { useSession } from "../workbench/session/hooks";
import type { WayOut } from "../workbench/session/notice";
import { evaluator, workbench } from "../workbench/session/session";
import { saveKept, saveShow } from "./files";
import styles from "./Notices.module.css";

const labels: Record<WayOut, string> = {
  dismiss: "Dismiss",
  "start afresh": "Start again",
  "discard what is kept": "Discard stored data",
  "take the other": "Show the other",
  "keep this": "Keep this one",
  "save again": "Save again",
  "export what is kept": "Export stored data",
  "take back the last change": "Undo the last change",
  "wait longer": "Wait longer",
  "compute again": "Compute again",
  "export the show": "Export show",
  "take the version": "Show this version",
};

function takeWayOut(noticeId: string, way: WayOut) {
  if (way === "export what is kept") saveKept();
  else if (way === "export the show") saveShow();
  else void workbench.takeWayOut(noticeId, way);
}

/** Notices about the session, with their actions. */
export function Notices() {
  const notices = useSession((session) => session.notices);
  return (
    <div aria-live="polite">
      <div className={styles.progress}>
        <FollowedProgress
          store={evaluator.progress}
          label="Evaluation of the design"
          onCancel={evaluator.cancel}
        />
      </div>
      {notices.map((notice) => (
        <div
          key={notice.id}
          data-notice={notice.id}
          className={`${styles.notice} ${styles[notice.severity]}`}
        >
          <Icon name={notice.severity} />
          <div className={styles.words}>
            <p>
              <span className="visually-hidden">{severityLabel[notice.severity]}: </span>
              {notice.sentence}
            </p>
            {notice.details.map((detail) => (
              <p key={detail} className={styles.detail}>
                {detail}
              </p>
            ))}
          </div>
          {notice.waysOut.map((way) => (
            <Button key={way} onClick={() => takeWayOut(notice.id, way)}>
              {labels[way]}
            </Button>
          ))}
        </div>
      ))}
    </div>
  );
}
