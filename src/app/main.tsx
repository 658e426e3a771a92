import "@fontsource-variable/source-sans-3/wght.css";
import "@fontsource/barlow-condensed/500.css";
import "@fontsource/barlow-condensed/600.css";
import { StrictMode, useEffect } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App";

interface Watch {
  /** the first picture stands */
  shown: () => void;
  /** nothing stands any more: a failure that no part of the screen could contain */
  failed: (error: unknown) => void;
}

function Watched({ shown }: { shown: () => void }) {
  useEffect(shown, [shown]);
  return <App />;
}

/** Draws the program into an element. */
export function showProgram(root: HTMLElement, { shown, failed }: Watch) {
  const onUncaughtError = (error: unknown) => {
    reportError(error);
    failed(error);
  };
  createRoot(root, { onUncaughtError }).render(
    <StrictMode>
      <Watched shown={shown} />
    </StrictMode>,
  );
}
