import { render, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { WORKS } from "../../../src/calc/sources";
import { Works } from "../../../src/panels/theory/Works";

describe("the works cited", () => {
  it("are all there, each with how it is known", () => {
    render(<Works />);
    const texts = screen
      .getAllByRole("listitem")
      .map(({ textContent }) => textContent.replaceAll("\u00a0", " "));
    expect(texts).toHaveLength(Object.keys(WORKS).length);
    expect(texts).toContain("F. W. Grover, Inductance Calculations, 1946 (from memory)");
    expect(texts).toContain("IEC 60204-1, 2016 (partly read: 6.2.4, in a summary clause by clause)");
    expect(texts.filter((text) => !/\((read|from memory|partly read: .+)\)$/.test(text))).toEqual([]);
  });
});
