import { registerSW } from "virtual:pwa-register";
import { useEffect, useRef, useState } from "react";
import { Button } from "../ui/Button";
import { Icon } from "../ui/Icon";
import { session } from "../workbench/session/session";
import styles from "./Notices.module.css";

/**
 * Unregisters a service worker whose cached copy of the program was cleared: such a worker never fetches it again.
 * The next start registers a new one.
 * @returns whether it was unregistered
 */
async function unregisterEmptied(): Promise<boolean> {
  const registration = await navigator.serviceWorker?.getRegistration();
  if (!registration?.active) return false;
  const names = await caches.keys();
  return !names.some((name) => name.includes("precache")) && registration.unregister();
}

/** Registers the service worker for offline use; a newer version waits until the user accepts it. */
export function NewVersion() {
  const [waiting, setWaiting] = useState(false);
  const update = useRef<(reload: boolean) => Promise<void>>(undefined);
  useEffect(() => {
    const register = (isUnregistered: boolean) => {
      if (!isUnregistered) update.current = registerSW({ onNeedRefresh: () => setWaiting(true) });
    };
    unregisterEmptied().then(register, () => register(false));
  }, []);
  if (!waiting) return null;
  return (
    <div className={`${styles.notice} ${styles.note}`} role="status">
      <Icon name="note" />
      <p className={styles.words}>A newer version is ready. Your work is saved before the update.</p>
      <Button
        onClick={async () => {
          session.flush();
          await session.settled();
          await update.current?.(true);
        }}
      >
        Update now
      </Button>
      <Button onClick={() => setWaiting(false)}>Later</Button>
    </div>
  );
}
