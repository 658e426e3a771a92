import type { ReactNode } from "react";
import { ErrorBoundary } from "react-error-boundary";
import { Failed } from "./Failed";

interface ContainedProps {
  /** what it is, as in “the burst chart”, without the article */
  what: string;
  /** in a line where there is no room for more */
  inLine?: boolean;
  /** before another try */
  onRetry?: (error: unknown) => void;
  children: ReactNode;
}

/** Keeps a failure to its own place: what fails is named there, the rest of the bench goes on. */
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
