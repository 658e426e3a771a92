import { useState } from "react";
import { Contained } from "../ui/Contained";
import { ContainmentContext } from "../ui/containment";
import { usePreferences } from "../workbench/session/preferences";
import { CautionsDialog } from "./CautionsDialog";
import { containment } from "./containment";
import { DropTarget } from "./DropTarget";
import { GoneNotice } from "./GoneNotice";
import { Header } from "./Header";
import { ImportRefusal } from "./ImportRefusal";
import { NewVersion } from "./NewVersion";
import { Notices } from "./Notices";
import { PhoneLayout } from "./PhoneLayout";
import { usePlace } from "./place";
import { ReplaceDialog } from "./ReplaceDialog";
import { SheetView } from "./SheetView";
import { TheoryView } from "./TheoryView";
import { useImport } from "./useImport";
import { useShortcuts } from "./useShortcuts";
import { useTheme } from "./useTheme";
import { useWide } from "./useWide";
import { VersionsView } from "./VersionsView";
import { WideLayout } from "./WideLayout";

/** The whole screen: header, layout, full-page views and dialogs. */
export function App() {
  useTheme();
  useShortcuts();
  const wide = useWide();
  const { importFile, askForFile, askForExample, refusal, forgetRefusal, incoming, forgetIncoming } =
    useImport();
  const acknowledged = usePreferences((preferences) => preferences.cautionsAcknowledged);
  const acknowledge = usePreferences((preferences) => preferences.acknowledgeCautions);
  const [showCautions, setShowCautions] = useState(false);
  const place = usePlace();
  const Layout = wide ? WideLayout : PhoneLayout;
  const header = (
    <>
      <Contained what="page header">
        <Header onImport={askForFile} onExample={askForExample} onCautions={() => setShowCautions(true)} />
      </Contained>
      <Contained what="list of notices">
        <Notices />
      </Contained>
      <Contained what="notice of deleted designs">
        <GoneNotice />
      </Contained>
      <Contained what="notice of a newer version">
        <NewVersion />
      </Contained>
    </>
  );
  return (
    <ContainmentContext value={containment}>
      <div hidden={place !== "bench"}>
        <Layout header={header} />
      </div>
      {place === "sheet" && <SheetView />}
      {place === "theory" && <TheoryView />}
      {place === "versions" && <VersionsView />}
      <DropTarget onFile={importFile} />
      <Contained what="reasons why the file was not opened">
        <ImportRefusal refusal={refusal} onClose={forgetRefusal} />
      </Contained>
      <Contained what="question before a show is replaced">
        <ReplaceDialog incoming={incoming} onClose={forgetIncoming} />
      </Contained>
      <Contained what="cautions">
        <CautionsDialog
          open={showCautions || !acknowledged}
          mustAcknowledge={!acknowledged}
          onAcknowledge={() => {
            acknowledge();
            setShowCautions(false);
          }}
        />
      </Contained>
    </ContainmentContext>
  );
}
