import { registerSW } from "virtual:pwa-register";
import { useEffect, useRef, useState } from "react";
import { Button } from "../ui/Button";
import { Icon } from "../ui/Icon";
import { session } from "../workbench/session/session";
import styles from "./Notices.module.css";

/**
 * Whether the worker's copy of the program was cleared. Such a worker never fetches it again, and stays as long as
 * a page has it: it is dismissed, and the next opening makes a new one.
 */
async function dismissEmptied(): Promise<boolean> {
  const registration = await navigator.serviceWorker?.getRegistration();
  if (!registration?.active) return false;
  const names = await caches.keys();
  return !names.some((name) => name.includes("precache")) && registration.unregister();
}

/** Keeps the app for use without a network; a newer version waits until it is asked for. */
export function NewVersion() {
  const [waiting, setWaiting] = useState(false);
  const take = useRef<(reload: boolean) => Promise<void>>(undefined);
  useEffect(() => {
    const register = (isDismissed: boolean) => {
      if (!isDismissed) take.current = registerSW({ onNeedRefresh: () => setWaiting(true) });
    };
    dismissEmptied().then(register, () => register(false));
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
