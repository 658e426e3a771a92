import { Suspense } from "react";
import { lazyPart } from "./lazyPart";
import { Waiting } from "./Waiting";

const CrossSection = lazyPart(import.meta.glob("../drawing/CrossSection.tsx"), "CrossSection");

export function Drawing() {
  return (
    <Suspense fallback={<Waiting what="drawing" />}>
      <CrossSection />
    </Suspense>
  );
}
