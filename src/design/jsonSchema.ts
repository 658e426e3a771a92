import * as z from "zod/mini";
import { designSchema } from "./schema";

/** The JSON Schema of a design in a file, published with the app. */
export function designJsonSchema(): object {
  return z.toJSONSchema(designSchema, { io: "input", target: "draft-2020-12" });
}
