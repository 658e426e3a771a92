import { describe, expect, it } from "vitest";
import { versionDate } from "../../../src/panels/versions/versionDate";

const now = new Date(2026, 4, 20, 0, 30);
const at = (...parts: [number, number, number, number, number]) => new Date(...parts).toISOString();

describe("the date of a version", () => {
  it.each([
    ["Today, 00:10", at(2026, 4, 20, 0, 10)],
    ["Yesterday, 23:50", at(2026, 4, 19, 23, 50)],
    ["Thursday, 08:05", at(2026, 4, 14, 8, 5)],
    ["13 May 2026, 08:05", at(2026, 4, 13, 8, 5)],
    ["21 May 2026, 08:05", at(2026, 4, 21, 8, 5)],
    ["At an unknown time", "once upon a time"],
  ])("is “%s”, by the calendar on the wall", (text, iso) => {
    expect(versionDate(iso, now)).toBe(text);
  });
});
