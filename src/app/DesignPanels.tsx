import { ControlPanel } from "../panels/drive/ControlPanel";
import { DrivePanel } from "../panels/drive/DrivePanel";
import { SupplyPanel } from "../panels/drive/SupplyPanel";
import { PrimaryPanel } from "../panels/primary/PrimaryPanel";
import { SecondaryPanel } from "../panels/secondary/SecondaryPanel";
import { SurroundingsPanel } from "../panels/surroundings/SurroundingsPanel";
import { TopLoadPanel } from "../panels/topLoad/TopLoadPanel";

/** The title-block column: everything that a builder decides, part by part. */
export function DesignPanels() {
  return (
    <>
      <SecondaryPanel />
      <TopLoadPanel />
      <PrimaryPanel />
      <DrivePanel />
      <SupplyPanel />
      <ControlPanel />
      <SurroundingsPanel />
    </>
  );
}
