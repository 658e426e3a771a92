import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { midiName } from "../../../src/calc/music/midiText";
import { runs } from "../../properties";

const utf8 = (text: string) => new TextEncoder().encode(text);
const latin1 = (text: string) => Uint8Array.from(text, (character) => character.charCodeAt(0));

describe("the text of a MIDI event", () => {
  it("is UTF-8 where it is valid, else Latin-1", () => {
    expect(midiName(utf8("Flöte · 笛 🎺"))).toBe("Flöte · 笛 🎺");
    expect(midiName(latin1("Flöte"))).toBe("Flöte");
    expect(midiName(Uint8Array.of(0xc0, 0xaf))).toBe("À¯");
  });

  it("loses control characters and what turns its direction, and stands on one line", () => {
    expect(midiName(utf8("a\u0000b\n\u001b[31mc\u202egnp.exe"))).toBe("a b [31mc gnp.exe");
    expect(midiName(utf8(" \u0007\r\n"))).toBe("");
  });

  it("reads as the platform's own decoder does, whichever bytes it is given", () => {
    const platform = (bytes: Uint8Array): string | null => {
      try {
        return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
      } catch {
        return null;
      }
    };
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 12 }), (bytes) => {
        const expected = platform(bytes) ?? String.fromCharCode(...bytes);
        expect(midiName(bytes)).toBe(midiName(utf8(expected)));
      }),
      runs(300, 9),
    );
  });

  it("is cut where it is long, between characters", () => {
    for (const text of ["x", "ö", "笛", "🎺"]) {
      const name = midiName(utf8(text.repeat(1_000_000)));
      expect(name).toBe(`${text.repeat(119)}…`);
    }
    expect(midiName(latin1("\u0080ö".repeat(500))).length).toBeLessThanOrEqual(120);
  });
});
