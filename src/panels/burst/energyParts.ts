/** The parts of a burst's energy balance, in the order of the diagram. */
export type Hatch = "solid" | "rising" | "crossed" | "dotted" | "open";

export interface EnergyPart {
  /** of the result `burst.energy.<id>` */
  id: "spark" | "secondary" | "primary" | "bank" | "switches" | "stored" | "returned";
  label: string;
  /** a colour token */
  colour: string;
  hatch: Hatch;
}

export const ENERGY_PARTS: readonly EnergyPart[] = [
  { id: "spark", label: "Spark", colour: "--field", hatch: "solid" },
  { id: "secondary", label: "Winding", colour: "--winding", hatch: "rising" },
  { id: "primary", label: "Primary conductor", colour: "--copper", hatch: "solid" },
  { id: "bank", label: "Capacitor bank", colour: "--copper", hatch: "rising" },
  { id: "switches", label: "Switches, conduction", colour: "--copper", hatch: "crossed" },
  { id: "stored", label: "Still stored", colour: "--ink-soft", hatch: "dotted" },
  { id: "returned", label: "Returned to reservoir", colour: "--ink-soft", hatch: "open" },
];
