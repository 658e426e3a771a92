import { registerSW } from "virtual:pwa-register";
import { useEffect, useRef, useState } from "react";
import { Button } from "../ui/Button";
import { Icon } from "../ui/Icon";
import { session } from "../workbench/session/session";
import styles from "./Notices.module.css";

/** Keeps the app for use without a network; a newer version waits until it is asked for. */
export function NewVersion() {
  const [waiting, setWaiting] = useState(false);
  const take = useRef<(reload: boolean) => Promise<void>>(undefined);
  useEffect(() => {
    take.current = registerSW({ onNeedRefresh: () => setWaiting(true) });
  }, []);
  if (!waiting) return null;
  return (
    <div className={`${styles.notice} ${styles.note}`} role="status">
      <Icon name="note" />
      <p className={styles.words}>A newer version is ready. What is open is saved before it is taken.</p>
      <Button
        onClick={async () => {
          session.flush();
          await session.settled();
          await take.current?.(true);
        }}
      >
        Take the newer version
      </Button>
      <Button onClick={() => setWaiting(false)}>Later</Button>
    </div>
  );
}
