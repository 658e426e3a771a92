/** The fields of a design and of a show, found by their paths. */
import { designFields } from "./designFields";
import { type ChoiceField, type Field, fieldsOf, type NumberField } from "./field";
import { arrangementFields, laneFields, spacingField } from "./showFields";

/** Every field of a design, once each. */
export const allFields: readonly Field[] = [
  ...new Map(fieldsOf(designFields).map((field) => [field.path, field])).values(),
];

const showFields: readonly Field[] = [
  spacingField,
  ...Object.values(arrangementFields),
  ...Object.values(laneFields),
];

const BY_PATH = new Map([...allFields, ...showFields].map((field) => [field.path, field]));

/** The declaration of the field at a path, with or without indices; null if there is none. */
export function fieldAt(path: string): Field | null {
  return BY_PATH.get(path.replace(/\.\d+(?=\.|$)/g, ".*")) ?? null;
}

function declared(path: string): Field {
  const field = fieldAt(path);
  if (!field) throw new Error(`no field is declared at “${path}”`);
  return field;
}

/** @throws if no number is declared at the path, which is a programming error */
export function numberField(path: string): NumberField {
  const field = declared(path);
  if (field.kind !== "number") throw new Error(`“${path}” is not a number`);
  return field;
}

/** @throws if no choice is declared at the path */
export function choiceField(path: string): ChoiceField {
  const field = declared(path);
  if (field.kind !== "choice") throw new Error(`“${path}” is not a choice`);
  return field;
}
