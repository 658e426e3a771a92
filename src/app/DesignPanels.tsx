import { ControlPanel } from "../panels/drive/ControlPanel";
import { DrivePanel } from "../panels/drive/DrivePanel";
import { SupplyPanel } from "../panels/drive/SupplyPanel";
import { PrimaryPanel } from "../panels/primary/PrimaryPanel";
import { SecondaryPanel } from "../panels/secondary/SecondaryPanel";
import { SurroundingsPanel } from "../panels/surroundings/SurroundingsPanel";
import { TopLoadPanel } from "../panels/topLoad/TopLoadPanel";
import { Contained } from "../ui/Contained";

const PANELS = [
  { what: "secondary's panel", Panel: SecondaryPanel },
  { what: "top load's panel", Panel: TopLoadPanel },
  { what: "primary's panel", Panel: PrimaryPanel },
  { what: "drive's panel", Panel: DrivePanel },
  { what: "supply's panel", Panel: SupplyPanel },
  { what: "control's panel", Panel: ControlPanel },
  { what: "surroundings' panel", Panel: SurroundingsPanel },
];

/** The title-block column: everything that a builder decides, part by part. */
export function DesignPanels() {
  return (
    <>
      {PANELS.map(({ what, Panel }) => (
        <Contained key={what} what={what}>
          <Panel />
        </Contained>
      ))}
    </>
  );
}
