import { useMemo } from "react";
import { findingMessage } from "../../evaluation/findingMessage";
import type { Remark } from "../../ui/Cell";
import { useEvaluation, useUnitSystem } from "../../workbench/hooks";

/** The findings whose remedy is this field, as remarks beneath it. */
export function useRemarks(path: string): Remark[] {
  const findings = useEvaluation((evaluation) => evaluation.findings);
  const system = useUnitSystem();
  return useMemo(
    () =>
      findings
        .filter((finding) => finding.where === path)
        .map((finding) => ({ severity: finding.severity, sentence: findingMessage(finding, system) })),
    [findings, path, system],
  );
}
