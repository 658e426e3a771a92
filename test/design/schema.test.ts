import { describe, expectTypeOf, it } from "vitest";
import type { z } from "zod";
import type { DesignParts } from "../../src/calc/design-parts";
import type { designSchema } from "../../src/design/schema";

type Parsed = z.output<typeof designSchema>;

// the type check holds these; a part that is renamed on one side alone does not compile
describe("the schema's parts", () => {
  it("are the calculation library's, there and back", () => {
    expectTypeOf<Parsed["air"]>().toEqualTypeOf<DesignParts["air"]>();
    expectTypeOf<Parsed["room"]>().toEqualTypeOf<DesignParts["room"]>();
    expectTypeOf<Parsed["secondary"]>().toEqualTypeOf<DesignParts["secondary"]>();
    expectTypeOf<Parsed["topLoad"]>().toEqualTypeOf<DesignParts["topLoad"]>();
    expectTypeOf<Parsed["primary"]>().toEqualTypeOf<DesignParts["primary"]>();
    expectTypeOf<Parsed["tank"]>().toEqualTypeOf<DesignParts["tank"]>();
    expectTypeOf<Parsed["drive"]>().toEqualTypeOf<DesignParts["drive"]>();
    expectTypeOf<Parsed["interrupter"]>().toEqualTypeOf<DesignParts["interrupter"]>();
    expectTypeOf<Parsed["spark"]>().toEqualTypeOf<DesignParts["spark"]>();
    expectTypeOf<Parsed["tuningAim"]>().toEqualTypeOf<DesignParts["tuningAim"]>();
    expectTypeOf<Parsed["corrections"]>().toEqualTypeOf<DesignParts["corrections"]>();
  });
});
