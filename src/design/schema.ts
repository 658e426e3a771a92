/**
 * The schema of a design: the declared fields with the document's format, version and texts. Values out of range,
 * crossing parts and taps past the end are valid in a document and give a finding.
 */
import * as z from "zod/mini";
import { designFields } from "../fields/designFields";
import { shapeOf } from "./schemaOf";

export const DESIGN_FORMAT = "coilwright-design";
export const DESIGN_VERSION = 1;

const LONGEST_TITLE = 200;
const LONGEST_NOTES = 20_000;

export const designSchema = z.strictObject({
  format: z.literal(DESIGN_FORMAT),
  version: z.literal(DESIGN_VERSION),
  title: z.string().check(z.maxLength(LONGEST_TITLE)),
  notes: z.string().check(z.maxLength(LONGEST_NOTES)),
  ...shapeOf(designFields.parts),
});
