import { ControlPanel } from "../panels/drive/ControlPanel";
import { DrivePanel } from "../panels/drive/DrivePanel";
import { SupplyPanel } from "../panels/drive/SupplyPanel";
import { PrimaryPanel } from "../panels/primary/PrimaryPanel";
import { SecondaryPanel } from "../panels/secondary/SecondaryPanel";
import { SurroundingsPanel } from "../panels/surroundings/SurroundingsPanel";
import { TopLoadPanel } from "../panels/topLoad/TopLoadPanel";
import { Contained } from "../ui/Contained";

const PANELS = [
  { what: "secondary panel", Panel: SecondaryPanel },
  { what: "top load panel", Panel: TopLoadPanel },
  { what: "primary panel", Panel: PrimaryPanel },
  { what: "drive panel", Panel: DrivePanel },
  { what: "supply panel", Panel: SupplyPanel },
  { what: "control panel", Panel: ControlPanel },
  { what: "surroundings panel", Panel: SurroundingsPanel },
];

/** The form: every field of the design, part by part. */
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
