import { Button } from "../ui/Button";
import type { IconName } from "../ui/Icon";
import { type Theme, usePreferences } from "../workbench/session/preferences";

const next: Record<Theme, Theme> = { system: "light", light: "dark", dark: "system" };
const icon: Record<Theme, IconName> = { system: "system", light: "sun", dark: "moon" };
const says: Record<Theme, string> = {
  system: "Light or dark as this device",
  light: "Light paper",
  dark: "Dark room",
};

/** Goes round: as the device has it, light paper, dark room. */
export function ThemeButton() {
  const theme = usePreferences((preferences) => preferences.theme);
  const setTheme = usePreferences((preferences) => preferences.setTheme);
  return (
    <Button
      kind="bare"
      icon={icon[theme]}
      aria-label={`Theme: ${says[theme]}`}
      title={`${says[theme]}. Press for: ${says[next[theme]]}`}
      onClick={() => setTheme(next[theme])}
    />
  );
}
