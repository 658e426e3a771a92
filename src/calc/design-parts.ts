/**
 * The parts of a design as the calculation reads them: plain data in SI units (`inclinationDegrees` alone is in
 * degrees), heights above the ground plane z = 0. Their types follow from the declared fields.
 */
import type { ValueOf } from "../fields/declaration";
import type { designFields } from "../fields/designFields";

export type DesignParts = ValueOf<typeof designFields>;

export type Air = DesignParts["air"];
export type Room = DesignParts["room"];
export type Secondary = DesignParts["secondary"];
export type TopLoad = DesignParts["topLoad"];
export type TopLoadElement = TopLoad["elements"][number];
export type Toroid = Extract<TopLoadElement, { shape: "toroid" }>;
export type Sphere = Extract<TopLoadElement, { shape: "sphere" }>;
export type BreakoutPoint = NonNullable<TopLoad["breakoutPoint"]>;
export type Primary = DesignParts["primary"];
export type StrikeRail = NonNullable<Primary["strikeRail"]>;
export type Tank = DesignParts["tank"];
export type CapacitorUnit = Tank["unit"];
export type Drive = DesignParts["drive"];
export type Supply = Drive["supply"];
export type Switch = Drive["switch"];
export type FosterElement = Switch["thermal"][number];
export type Commutation = Drive["commutation"];
export type CurrentTransformer = Drive["currentTransformer"];
export type Interrupter = DesignParts["interrupter"];
export type Spark = DesignParts["spark"];
export type TuningAim = DesignParts["tuningAim"];
export type Corrections = DesignParts["corrections"];
