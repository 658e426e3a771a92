import { describe, expect, it } from "vitest";
import { PREFERENCES_KEY } from "../../../src/workbench/keeping/storageKeys";
import { createPreferences } from "../../../src/workbench/session/preferences";
import { MemoryStorage } from "../fakes";

const now = () => new Date("2026-05-01T12:00:00Z");

describe("preferences", () => {
  it("are kept for the next time", () => {
    const storage = new MemoryStorage();
    const { setTheme, setUnitSystem, acknowledgeCautions, setPanelOpen } = createPreferences(
      storage,
      now,
    ).getState();
    setTheme("dark");
    setUnitSystem("inch");
    setPanelOpen("drive", false);
    acknowledgeCautions();
    expect(createPreferences(storage, now).getState()).toMatchObject({
      theme: "dark",
      unitSystem: "inch",
      panelsOpen: { drive: false },
      cautionsAcknowledged: true,
      cautionsAcknowledgedAt: "2026-05-01T12:00:00.000Z",
    });
  });

  it("fall back one by one where a kept value is wrong", () => {
    const storage = new MemoryStorage();
    storage.setItem(PREFERENCES_KEY, JSON.stringify({ theme: "pink", unitSystem: "inch" }));
    expect(createPreferences(storage, now).getState()).toMatchObject({ theme: "system", unitSystem: "inch" });
  });

  it.each(["", "null", "[]", "{"])("fall back to the defaults where “%s” is kept", (text) => {
    const storage = new MemoryStorage();
    storage.setItem(PREFERENCES_KEY, text);
    expect(createPreferences(storage, now).getState()).toMatchObject({ cautionsAcknowledged: false });
  });

  it("work without a storage and over a full one", () => {
    const full = new MemoryStorage();
    full.fail = new DOMException("full", "QuotaExceededError");
    for (const storage of [null, full]) {
      const store = createPreferences(storage, now);
      store.getState().setTheme("light");
      expect(store.getState().theme).toBe("light");
    }
  });
});
