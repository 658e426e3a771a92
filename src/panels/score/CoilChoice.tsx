import type { Coil } from "../../calc/music/lane";
import { ChoiceField } from "../../ui/ChoiceField";
import type { CoilDesigns } from "../../workbench/background/coilLoadsJob";

const COILS = ["left", "right"] as const;

interface CoilChoiceProps {
  label: string;
  designs: CoilDesigns;
  chosen: Coil;
  onChoose: (coil: Coil) => void;
}

/** The choice of a coil; hidden if only one plays. */
export function CoilChoice({ label, designs, chosen, onChoose }: CoilChoiceProps) {
  if (!designs.right) return null;
  return (
    <ChoiceField
      label={label}
      options={COILS}
      value={chosen}
      onCommit={(value) => onChoose(value === "right" ? "right" : "left")}
    />
  );
}
