/**
 * The page's entry: loads the program and watches it. Where it does not come, or fails as a whole, the
 * safe page stands in. Nothing here may need what it guards against.
 */
import "../ui/tokens.css";
import "../ui/base.css";
import "./safeStart/safeStart.css";
import { freshLog } from "../workbench/keeping/freshLog";
import { element } from "./safeStart/element";
import { showSafePage } from "./safeStart/safePage";
import { showTheme } from "./safeStart/theme";

const SAFE = "#safe";

/** ms until it is said that the program takes long */
const SLOW = 8000;

const isSafe = window.location.hash === SAFE;

function reloadAtTurn() {
  if ((window.location.hash === SAFE) !== isSafe) window.location.reload();
}

/** Goes on waiting, and offers the safe page meanwhile; the program's first picture takes its place. */
function tellSlow(root: HTMLElement) {
  const link = element("a", { href: SAFE }, "Open the safe page");
  root.append(element("p", { class: "starting", role: "status" }, "The program takes long to start. ", link));
}

async function start() {
  showTheme();
  // while the program is on its way
  void freshLog();
  // each of the two is left by starting the other, as when Back is pressed
  window.addEventListener("hashchange", reloadAtTurn);
  if (isSafe) return showSafePage({ kind: "asked" });
  const root = document.getElementById("root") ?? document.body;
  const slow = setTimeout(() => tellSlow(root), SLOW);
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
