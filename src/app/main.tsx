import "@fontsource-variable/source-sans-3/wght.css";
import "@fontsource/barlow-condensed/500.css";
import "@fontsource/barlow-condensed/600.css";
import { StrictMode, useEffect } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App";

interface Callbacks {
  /** called after the first render */
  shown: () => void;
  /** called after a failure that no error boundary could contain */
  failed: (error: unknown) => void;
}

function NotifyingApp({ shown }: { shown: () => void }) {
  useEffect(shown, [shown]);
  return <App />;
}

/** Renders the program into an element. */
export function showProgram(root: HTMLElement, { shown, failed }: Callbacks) {
  const onUncaughtError = (error: unknown) => {
    reportError(error);
    failed(error);
  };
  createRoot(root, { onUncaughtError }).render(
    <StrictMode>
      <NotifyingApp shown={shown} />
    </StrictMode>,
  );
}
