import { useMemo } from "react";
import type { Finding } from "../../evaluation/findings/finding";
import { findingMessage } from "../../evaluation/findings/findingMessage";
import type { Remark } from "../../ui/Cell";
import { useEvaluation, useUnitSystem } from "../../workbench/session/hooks";

/** The findings whose remedy is this field, as remarks below it. */
export function useRemarks(path: string): Remark[] {
  // findings are new objects with every evaluation; compared as text, equal ones cause no new render
  const own = useEvaluation(({ findings }) => JSON.stringify(findings.filter(({ where }) => where === path)));
  const system = useUnitSystem();
  return useMemo(
    () =>
      (JSON.parse(own) as Finding[]).map((finding) => ({
        severity: finding.severity,
        sentence: findingMessage(finding, system),
      })),
    [own, system],
  );
}
