import { PREFERENCES_KEY } from "../../workbench/keeping/storageKeys";

function chosen(): unknown {
  try {
    return JSON.parse(localStorage.getItem(PREFERENCES_KEY) ?? "null")?.theme;
  } catch {
    return null;
  }
}

/** Light or dark as it was chosen, else as the device has it; before the program, which then follows it. */
export function showTheme() {
  const theme = chosen();
  const dark =
    theme === "dark" || (theme !== "light" && window.matchMedia("(prefers-color-scheme: dark)").matches);
  document.documentElement.dataset.theme = dark ? "dark" : "light";
}
