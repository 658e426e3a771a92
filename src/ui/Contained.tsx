import type { ReactNode } from "react";
import { ErrorBoundary } from "react-error-boundary";
import { Failed } from "./Failed";

interface ContainedProps {
  /** its name without the article, as in “burst chart” */
  what: string;
  /** shows the failure in one line, where there is little room */
  inLine?: boolean;
  /** called before a retry */
  onRetry?: (error: unknown) => void;
  children: ReactNode;
}

/** An error boundary: a part that fails is named in its place, and the rest of the workbench keeps working. */
export function Contained({ what, inLine = false, onRetry, children }: ContainedProps) {
  return (
    <ErrorBoundary
      fallbackRender={({ error, resetErrorBoundary }) => (
        <Failed
          what={what}
          inLine={inLine}
          error={error}
          retry={() => {
            onRetry?.(error);
            resetErrorBoundary();
          }}
        />
      )}
    >
      {children}
    </ErrorBoundary>
  );
}
