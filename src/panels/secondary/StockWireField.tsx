import { STOCK_WIRES, stockWireOf } from "../../design/stockWires";
import { ChoiceField } from "../../ui/ChoiceField";
import { useDesign } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";

const OTHER = "other";
const OPTIONS = [OTHER, ...STOCK_WIRES.map(({ name }) => name)];

const HELP = {
  what: "Standard size of enamelled round wire; choosing one sets both diameters below in one step.",
  measure: "Read size and grade on the reel's label; then measure over the enamel and correct the diameter.",
  typical: "IEC 60317-0-1, maximum diameter over the enamel; wire from the reel may be 4 to 8 % thinner.",
};

function setStockSize(name: string): void {
  const stock = STOCK_WIRES.find((each) => each.name === name);
  if (!stock) return;
  const { conductorDiameter, overallDiameter } = stock;
  workbench.edit(`choose wire ${name}`, (design) => {
    const { secondary } = design;
    const wire = { ...secondary.wire, conductorDiameter, overallDiameter };
    return { ...design, secondary: { ...secondary, wire } };
  });
}

/** A choice of wire from the standard's sizes. */
export function StockWireField() {
  const wire = useDesign((design) => design.secondary.wire);
  return (
    <ChoiceField
      label="Standard size"
      wide
      help={HELP}
      options={OPTIONS}
      value={stockWireOf(wire)?.name ?? OTHER}
      onCommit={setStockSize}
    />
  );
}
