/** Differences of documents as table rows, with labels and units. */
import type { Design } from "../../design/design";
import { type Difference, differences } from "../../design/differences";
import type { Show } from "../../design/show";
import { fieldAt } from "../../fields/allFields";
import type { NumberField } from "../../fields/field";
import { arrangementFields, spacingField } from "../../fields/showFields";
import { formatIn } from "../../units/format";
import { fieldUnit } from "../../units/quantities";
import type { UnitSystem } from "../../units/unitSystem";

export interface ComparedRow {
  key: string;
  /** the part of the design that has the field; empty for fields of the whole */
  section: string;
  label: string;
  /** in the version */
  old: string;
  present: string;
}

const NOTHING = "none";
/** Numbers of digits to try until two different values look different. */
const DIGITS = [7, 12, 17];

/** Names of parts by the prefixes of their fields' paths, longer prefixes first. */
const SECTIONS: readonly (readonly [path: string, name: string])[] = [
  ["primary.strikeRail.", "Strike rail"],
  ["topLoad.breakoutPoint.", "Breakout point"],
  ["drive.supply.", "Supply"],
  ["drive.switch.", "Switch"],
  ["drive.commutation.", "Commutation"],
  ["drive.currentTransformer.", "Current transformer"],
  ["secondary.wire.", "Wire"],
  ["secondary.", "Secondary"],
  ["topLoad.", "Top load"],
  ["primary.", "Primary"],
  ["tank.unit.", "Tank capacitor, unit"],
  ["tank.", "Tank capacitor"],
  ["drive.", "Drive"],
  ["interrupter.", "Interrupter"],
  ["spark.", "Spark"],
  ["air.", "Air"],
  ["room.", "Room"],
  ["tuningAim.", "Tuning aim"],
  ["corrections.", "Model"],
  ["arrangement.", "Score"],
];

function sectionOf(path: string): string {
  const element = /^topLoad\.elements\.(\d+)\./.exec(path);
  if (element) return `Top load, element ${Number(element[1]) + 1}`;
  return SECTIONS.find(([beginning]) => path.startsWith(beginning))?.[1] ?? "";
}

/** A key such as “measuredResonance” as words, for values without a declaration. */
function inWords(path: string): string {
  const name = path.split(".").findLast((part) => !/^\d+$/.test(part)) ?? path;
  const words = name.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const SHOW_FIELDS = new Map<string, NumberField>(
  [spacingField, ...Object.values(arrangementFields)].map((field) => [field.path, field]),
);

function plainText(value: unknown): string {
  if (value === undefined || value === null || value === "") return NOTHING;
  if (typeof value === "boolean") return value ? "on" : "off";
  return String(value);
}

/** Both values in the unit of their field, with enough digits to look different. */
function quantities(field: NumberField, pair: readonly unknown[], system: UnitSystem): string[] {
  const unit = fieldUnit(field.default, field.dimension, system);
  const text = (value: unknown, digits: number) =>
    typeof value === "number" ? formatIn(unit, value, field.dimension, digits).text : plainText(value);
  const tried = DIGITS.map((digits) => pair.map((value) => text(value, digits)));
  return tried.find(([then, now]) => then !== now) ?? tried[tried.length - 1];
}

function rowOf({ path, before, after }: Difference, system: UnitSystem): ComparedRow {
  const field = fieldAt(path) ?? SHOW_FIELDS.get(path);
  const [old, present] =
    field?.kind === "number"
      ? quantities(field, [before, after], system)
      : [plainText(before), plainText(after)];
  return { key: path, section: sectionOf(path), label: field?.label ?? inWords(path), old, present };
}

/** The fields in which a design's version and the present design differ. */
export function designRows(then: Design, now: Design, system: UnitSystem): ComparedRow[] {
  return differences(then, now).map((difference) => rowOf(difference, system));
}

/** A design that differs between two states of a show. */
export interface ComparedDesign {
  id: string;
  title: string;
  state: "only then" | "only now" | "differs";
  rows: ComparedRow[];
}

function comparedDesign(id: string, then: Show, now: Show, system: UnitSystem): ComparedDesign[] {
  const [old, present] = [then, now].map(({ designs }) => (Object.hasOwn(designs, id) ? designs[id] : null));
  if (!old || !present) {
    const only = old ?? present;
    return only ? [{ id, title: only.title, state: old ? "only then" : "only now", rows: [] }] : [];
  }
  const rows = designRows(old, present, system);
  return rows.length > 0 ? [{ id, title: present.title, state: "differs", rows }] : [];
}

function titleIn(show: Show, id: string | null): string {
  return id === null ? NOTHING : show.designs[id].title;
}

function counted(list: readonly unknown[]): string {
  return list.length === 0 ? NOTHING : String(list.length);
}

/** Parts of a show that are compared by a summary instead of value by value. */
const PARTS: readonly { key: keyof Show; label: string; text: (show: Show) => string }[] = [
  { key: "left", label: "Left coil", text: (show) => titleIn(show, show.left) },
  { key: "right", label: "Right coil", text: (show) => titleIn(show, show.right) },
  { key: "lineUp", label: "Top loads in the line-up", text: (show) => counted(show.lineUp.candidates) },
  { key: "lanes", label: "Lanes of the score", text: (show) => counted(show.lanes) },
  { key: "score", label: "Score", text: (show) => show.score?.fileName ?? NOTHING },
];

function partRows(then: Show, now: Show): ComparedRow[] {
  return PARTS.flatMap(({ key, label, text }) => {
    if (JSON.stringify(then[key]) === JSON.stringify(now[key])) return [];
    const [old, present] = [text(then), text(now)];
    const changed = old === present ? `${present}, changed` : present;
    return [{ key, section: "", label, old, present: changed }];
  });
}

/** The part of a show that is compared value by value: without designs, summarised parts and which design is open. */
function comparedByValue(show: Show): object {
  const others = new Set<string>(["designs", "order", "open", ...PARTS.map(({ key }) => key)]);
  return Object.fromEntries(Object.entries(show).filter(([key]) => !others.has(key)));
}

export interface ComparedShow {
  designs: ComparedDesign[];
  rows: ComparedRow[];
}

/** The differences of a version of the show and the present one: designs added, removed or changed, and the rest. */
export function comparedShow(then: Show, now: Show, system: UnitSystem): ComparedShow {
  const ids = [...new Set([...then.order, ...now.order])];
  const valueRows = differences(comparedByValue(then), comparedByValue(now)).map((difference) =>
    rowOf(difference, system),
  );
  return {
    designs: ids.flatMap((id) => comparedDesign(id, then, now, system)),
    rows: [...partRows(then, now), ...valueRows],
  };
}
