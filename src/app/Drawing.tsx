import { lazyPart } from "../ui/lazyPart";

export const Drawing = lazyPart(() => import("../drawing/CrossSection"), "CrossSection", "drawing");
