/** The user's preferences: stored in the browser, separate from the show and from undo. */
import * as z from "zod/mini";
import { useStore } from "zustand";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { UnitSystem } from "../../units/unitSystem";
import { browserStorage } from "../keeping/browserStorage";
import { PREFERENCES_KEY } from "../keeping/storageKeys";

export type Theme = "light" | "dark" | "system";

export interface Preferences {
  theme: Theme;
  unitSystem: UnitSystem;
  /** whether the cautions of the first start were acknowledged in this browser */
  cautionsAcknowledged: boolean;
  /** ISO 8601; null before that */
  cautionsAcknowledgedAt: string | null;
  /** by the panel's name; a panel without an entry has its default */
  panelsOpen: Readonly<Record<string, boolean>>;
}

export interface PreferencesState extends Preferences {
  setTheme(theme: Theme): void;
  setUnitSystem(unitSystem: UnitSystem): void;
  acknowledgeCautions(): void;
  setPanelOpen(panel: string, open: boolean): void;
}

const DEFAULTS: Preferences = {
  theme: "system",
  unitSystem: "metric",
  cautionsAcknowledged: false,
  cautionsAcknowledgedAt: null,
  panelsOpen: {},
};

/** Each preference falls back to its default separately, so that one bad value does not affect the others. */
const preferencesSchema = z.object({
  theme: z.catch(z.enum(["light", "dark", "system"]), DEFAULTS.theme),
  unitSystem: z.catch(z.enum(["metric", "inch"]), DEFAULTS.unitSystem),
  cautionsAcknowledged: z.catch(z.boolean(), false),
  cautionsAcknowledgedAt: z.catch(z.nullable(z.string()), null),
  panelsOpen: z.catch(z.record(z.string(), z.boolean()), {}),
});

function readPreferences(storage: Storage | null): Preferences {
  try {
    return preferencesSchema.parse(JSON.parse(storage?.getItem(PREFERENCES_KEY) ?? "{}"));
  } catch {
    return DEFAULTS;
  }
}

/** Stores the preferences; if the browser refuses, they last until the page is closed. */
function storePreferences(storage: Storage | null, preferences: Preferences): void {
  try {
    storage?.setItem(PREFERENCES_KEY, JSON.stringify(preferencesSchema.parse(preferences)));
  } catch {
    return;
  }
}

/** Creates the store of preferences, with or without a storage. */
export function createPreferences(storage: Storage | null, now: () => Date): StoreApi<PreferencesState> {
  const store = createStore<PreferencesState>((set, get) => ({
    ...readPreferences(storage),
    setTheme: (theme) => set({ theme }),
    setUnitSystem: (unitSystem) => set({ unitSystem }),
    acknowledgeCautions: () =>
      set({ cautionsAcknowledged: true, cautionsAcknowledgedAt: now().toISOString() }),
    setPanelOpen: (panel, open) => set({ panelsOpen: { ...get().panelsOpen, [panel]: open } }),
  }));
  store.subscribe((state) => storePreferences(storage, state));
  return store;
}

const preferences = createPreferences(browserStorage(), () => new Date());

/** A part of the preferences, updated when it changes. */
export function usePreferences<Part>(selector: (preferences: PreferencesState) => Part): Part {
  return useStore(preferences, selector);
}
