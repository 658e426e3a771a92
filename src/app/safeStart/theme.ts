import { PREFERENCES_KEY } from "../../workbench/keeping/storageKeys";

function chosen(): unknown {
  try {
    return JSON.parse(localStorage.getItem(PREFERENCES_KEY) ?? "null")?.theme;
  } catch {
    return null;
  }
}

function isDark(): boolean {
  const theme = chosen();
  if (theme === "dark" || theme === "light") return theme === "dark";
  try {
    return window.matchMedia("(prefers-color-scheme: dark)").matches;
  } catch {
    return false;
  }
}

/** Sets the chosen theme, or else the device's, before the program loads. */
export function showTheme() {
  document.documentElement.dataset.theme = isDark() ? "dark" : "light";
}
