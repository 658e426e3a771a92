import "@fontsource-variable/source-sans-3/wght.css";
import "@fontsource/barlow-condensed/500.css";
import "@fontsource/barlow-condensed/600.css";
import "../ui/tokens.css";
import "../ui/base.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App";

const root = document.getElementById("root");
if (!root) throw new Error("The page has no element with the id root to draw into.");
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
