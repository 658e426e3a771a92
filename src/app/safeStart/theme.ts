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

/** Light or dark as it was chosen, else as the device has it; before the program, which then follows it. */
export function showTheme() {
  document.documentElement.dataset.theme = isDark() ? "dark" : "light";
}
