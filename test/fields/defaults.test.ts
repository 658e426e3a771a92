import { describe, expect, it } from "vitest";
import { parseDesign } from "../../src/design/design";
import { pierHallLeft } from "../../src/design/examples";
import { defaultValue, withDefaults } from "../../src/fields/defaults";
import { designFields } from "../../src/fields/designFields";

describe("the declared defaults", () => {
  it("are a design that the schema takes", () => {
    const { format, version, title, notes } = pierHallLeft;
    const design = { format, version, title, notes, ...defaultValue(designFields) };
    expect(parseDesign(design)).toEqual({ ok: true, design });
  });

  it("take the place of what was left out, as the schema has it, and leave what was said", () => {
    const { corrections, ...rest } = pierHallLeft;
    const { formerWall, ...secondary } = rest.secondary;
    const short = { ...rest, secondary: { ...secondary, turns: 900 } };
    const parsed = parseDesign(short);
    expect(parsed).toMatchObject({ ok: true, design: withDefaults(designFields, short) });
    expect(withDefaults(designFields, short)).toMatchObject({
      corrections,
      secondary: { turns: 900, formerWall },
    });
  });
});
