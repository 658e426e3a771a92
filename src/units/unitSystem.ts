export type UnitSystem = "metric" | "inch";
