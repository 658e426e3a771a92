/** Every field of a design, declared once; form, schema, units, defaults and help derive from here. */
import type { ChoiceField, Field, NumberField, SwitchField } from "./field";
import { DRIVE_FIELDS } from "./fields/drive";
import { PRIMARY_FIELDS } from "./fields/primary";
import { SECONDARY_FIELDS } from "./fields/secondary";
import { SURROUNDINGS_FIELDS } from "./fields/surroundings";
import { TANK_FIELDS } from "./fields/tank";
import { TOP_LOAD_FIELDS } from "./fields/topLoad";

export const allFields: readonly Field[] = [
  ...SECONDARY_FIELDS,
  ...TOP_LOAD_FIELDS,
  ...PRIMARY_FIELDS,
  ...TANK_FIELDS,
  ...DRIVE_FIELDS,
  ...SURROUNDINGS_FIELDS,
];

const BY_PATH = new Map(allFields.map((field) => [field.path, field]));

/** The declaration of the field at a path, with or without indices; null where there is none. */
export function fieldAt(path: string): Field | null {
  return BY_PATH.get(path.replace(/\.\d+(?=\.|$)/g, ".*")) ?? null;
}

function declared(path: string): Field {
  const field = fieldAt(path);
  if (!field) throw new Error(`no field is declared at “${path}”`);
  return field;
}

/** @throws where no number is declared at the path: a name in the code is wrong */
export function numberField(path: string): NumberField {
  const field = declared(path);
  if (field.kind !== "number") throw new Error(`“${path}” is no number`);
  return field;
}

/** @throws where no choice is declared at the path */
export function choiceField(path: string): ChoiceField {
  const field = declared(path);
  if (field.kind !== "choice") throw new Error(`“${path}” is no choice`);
  return field;
}

/** @throws where no switch is declared at the path */
export function switchField(path: string): SwitchField {
  const field = declared(path);
  if (field.kind !== "switch") throw new Error(`“${path}” is no switch`);
  return field;
}
