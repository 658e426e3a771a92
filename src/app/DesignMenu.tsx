import { titleOf } from "../design/titleOf";
import { Menu, type MenuEntry } from "../ui/Menu";
import { useShow } from "../workbench/session/hooks";
import { workbench } from "../workbench/session/session";
import { saveDesign, saveNetlist, saveShow } from "./files";
import { openVersions } from "./place";

/** The menu of the show's designs and file actions; deleting can be undone. */
export function DesignMenu({ onImport, onExample }: { onImport: () => void; onExample: () => void }) {
  const show = useShow((whole) => whole);
  const open = show.designs[show.open];
  const designs = show.order.map(
    (id): MenuEntry => ({
      kind: "choice",
      label: titleOf(show.designs[id]),
      chosen: id === show.open,
      run: () => workbench.openDesign(id),
    }),
  );
  const entries: MenuEntry[] = [
    { kind: "heading", label: `Designs in “${show.name || "Untitled show"}”` },
    ...designs,
    { kind: "heading", label: `Actions on “${titleOf(open)}”` },
    { kind: "action", label: "Rename", run: () => document.getElementById("design-title")?.focus() },
    { kind: "action", label: "Duplicate", run: () => workbench.duplicateDesign(show.open) },
    { kind: "action", label: "Export design", keys: "Ctrl S", run: () => saveDesign(show.open) },
    {
      kind: "action",
      label: "Export netlist, frequency response",
      run: () => saveNetlist(show.open, "response"),
    },
    { kind: "action", label: "Export netlist, one burst", run: () => saveNetlist(show.open, "burst") },
    { kind: "action", label: "Delete", icon: "remove", run: () => workbench.deleteDesign(show.open) },
    { kind: "heading", label: "More" },
    { kind: "action", label: "Versions and bin", run: openVersions },
    { kind: "action", label: "New design", icon: "plus", run: () => workbench.newDesign() },
    { kind: "action", label: "Open file", icon: "folder", run: onImport },
    { kind: "action", label: "Rename show", run: () => document.getElementById("show-name")?.focus() },
    { kind: "action", label: "Export show with its score", run: saveShow },
    { kind: "action", label: "Load example: the pier hall pair", run: onExample },
  ];
  return <Menu name="Designs and files" label="Designs" entries={entries} />;
}
