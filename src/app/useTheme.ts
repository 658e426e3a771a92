import { useEffect } from "react";
import { usePreferences } from "../workbench/session/preferences";

const dark = "(prefers-color-scheme: dark)";

/** Sets the theme on the page's root; the system theme follows the device. */
export function useTheme() {
  const theme = usePreferences((preferences) => preferences.theme);
  useEffect(() => {
    const media = window.matchMedia(dark);
    const apply = () => {
      const shown = theme === "system" ? (media.matches ? "dark" : "light") : theme;
      document.documentElement.dataset.theme = shown;
    };
    apply();
    media.addEventListener("change", apply);
    return () => media.removeEventListener("change", apply);
  }, [theme]);
}
