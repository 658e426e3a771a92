import { lazy, Suspense } from "react";
import { Waiting } from "./Waiting";

const CrossSection = lazy(async () => ({ default: (await import("../drawing/CrossSection")).CrossSection }));

export function Drawing() {
  return (
    <Suspense fallback={<Waiting what="drawing" />}>
      <CrossSection />
    </Suspense>
  );
}
