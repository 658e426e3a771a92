// @vitest-environment jsdom
import { describe, expect, it } from "vitest";
import { belongsToField, shortcutOf } from "../../src/app/shortcuts";

const press = (key: string, held: Partial<KeyboardEvent> = {}) =>
  shortcutOf({ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...held });

describe("the keys of the whole screen", () => {
  it("undo with Ctrl or Cmd and Z, redo with Shift or with Y", () => {
    expect(press("z", { ctrlKey: true })).toBe("undo");
    expect(press("z", { metaKey: true })).toBe("undo");
    expect(press("Z", { metaKey: true, shiftKey: true })).toBe("redo");
    expect(press("y", { ctrlKey: true })).toBe("redo");
  });

  it("export with S and print the build sheet with P", () => {
    expect(press("s", { ctrlKey: true })).toBe("export");
    expect(press("p", { metaKey: true })).toBe("sheet");
  });

  it("leave plain letters and the browser's other keys alone", () => {
    expect(press("z")).toBeNull();
    expect(press("t", { ctrlKey: true })).toBeNull();
    expect(press("s", { ctrlKey: true, altKey: true })).toBeNull();
  });

  it("leave undo to free text while it holds some that is not taken over, and to no other field", () => {
    const field = document.createElement("input");
    field.dataset.ownUndo = "";
    expect(belongsToField("undo", field)).toBe(false);
    field.dataset.draft = "a place";
    expect(belongsToField("undo", field)).toBe(true);
    expect(belongsToField("export", field)).toBe(false);
    delete field.dataset.ownUndo;
    expect(belongsToField("undo", field)).toBe(false);
  });
});
