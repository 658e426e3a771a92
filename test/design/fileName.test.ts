import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fileStem } from "../../src/design/fileName";
import { runs } from "../properties";

describe("the stem of a file's name", () => {
  it.each([
    ["Pier hall, left coil", "pier-hall-left-coil"],
    ["=cmd|' /C calc'!A0", "cmd-c-calc-a0"],
    ["../../etc/passwd", "etc-passwd"],
    [".hidden", "hidden"],
    ["CON", "con-file"],
    ["com1", "com1-file"],
    ["Console", "console"],
    ["///", "untitled"],
    ["Zwölf Töne №9 हिन्दी", "zwölf-töne-no9-हिन्दी"],
  ])("of %j is %j", (title, stem) => expect(fileStem(title)).toBe(stem));

  it("is safe for any title: words and hyphens, never empty, never long", () => {
    const points = fc.array(fc.integer({ min: 0, max: 0x10ffff }), { maxLength: 100 });
    const title = points.map((all) => String.fromCodePoint(...all));
    fc.assert(
      fc.property(title, (text) => {
        const stem = fileStem(text);
        expect(stem).toMatch(/^[\p{L}\p{N}][\p{L}\p{N}\p{M}]*(-[\p{L}\p{N}][\p{L}\p{N}\p{M}]*)*$/u);
        expect(new TextEncoder().encode(stem).length).toBeLessThanOrEqual(200);
      }),
      runs(100, 9),
    );
  });
});
