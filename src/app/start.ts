/**
 * The page's entry: loads the program. If it does not load, or fails as a whole, the safe page replaces
 * it. Nothing here may depend on the program.
 */
import "../ui/tokens.css";
import "../ui/base.css";
import "./safeStart/safeStart.css";
import { freshLog } from "../workbench/keeping/freshLog";
import { element } from "./safeStart/element";
import { showSafePage } from "./safeStart/safePage";
import { showTheme } from "./safeStart/theme";

const SAFE = "#safe";

/** ms until the safe page is offered */
const SLOW = 8000;

const isSafe = window.location.hash === SAFE;

function reloadOnSwitch() {
  if ((window.location.hash === SAFE) !== isSafe) window.location.reload();
}

/** Offers the safe page while the program is still loading; the program's first render replaces it. */
function offerSafePage(root: HTMLElement) {
  const link = element("a", { href: SAFE }, "Open the safe page");
  root.append(element("p", { class: "starting", role: "status" }, "The program is slow to start. ", link));
}

async function start() {
  showTheme();
  // in parallel with loading the program
  void freshLog();
  // switching between program and safe page, as by Back, is a reload
  window.addEventListener("hashchange", reloadOnSwitch);
  if (isSafe) return showSafePage({ kind: "asked" });
  const root = document.getElementById("root") ?? document.body;
  const slow = setTimeout(() => offerSafePage(root), SLOW);
  const shown = () => clearTimeout(slow);
  const failed = (error: unknown) => {
    shown();
    void showSafePage({ kind: "failed", error });
  };
  try {
    const { showProgram } = await import("./main");
    showProgram(root, { shown, failed });
  } catch (error) {
    shown();
    await showSafePage({ kind: "not loaded", error });
  }
}

void start();
