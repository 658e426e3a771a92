import { valueAt } from "../../design/changeAt";
import { fieldAt } from "../../fields/allFields";
import type { ChoiceField as Choice, NumberField, SwitchField as Switch } from "../../fields/field";
import { ChoiceField } from "../../ui/ChoiceField";
import { QuantityField } from "../../ui/QuantityField";
import { SwitchField } from "../../ui/SwitchField";
import { useDesign, useShow, useUnitSystem } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { meaningRefusal, rangeText } from "./meaning";
import { placeIn } from "./places";
import { useRemarks } from "./useRemarks";

interface DesignFieldProps {
  /** dotted path in the design, with indices */
  path: string;
  wide?: boolean;
  /** hides its findings, if the field is already shown elsewhere */
  quiet?: boolean;
}

/** One field of the design with label, unit, range and help from its declaration. */
export function DesignField({ path, wide, quiet }: DesignFieldProps) {
  const field = fieldAt(path);
  if (!field) throw new Error(`no field is declared as “${path}”`);
  if (field.kind === "number") return <NumberEntry field={field} path={path} wide={wide} quiet={quiet} />;
  return field.kind === "choice" ? (
    <ChoiceEntry field={field} path={path} wide={wide} />
  ) : (
    <SwitchEntry field={field} path={path} wide={wide} />
  );
}

interface EntryProps<Kind> {
  field: Kind;
  path: string;
  wide?: boolean;
  quiet?: boolean;
}

function useEntry(path: string) {
  return {
    value: useDesign((design) => valueAt(design, path)),
    remarks: useRemarks(path),
    onCommit: (value: unknown, run?: string) => workbench.setValue(path, value, undefined, run),
  };
}

function NumberEntry({ field, path, wide, quiet }: EntryProps<NumberField>) {
  const system = useUnitSystem();
  const { value, remarks, ...entry } = useEntry(path);
  const place = useShow((show) => placeIn(show.open, path));
  return (
    <QuantityField
      {...entry}
      place={place}
      remarks={quiet ? [] : remarks}
      label={field.label}
      help={field.help}
      path={path}
      wide={wide}
      value={typeof value === "number" ? value : null}
      usual={field.default}
      step={field.step}
      dimension={field.dimension}
      system={system}
      nullable={field.nullable}
      whole={field.meaning.whole}
      range={rangeText(field, system)}
      refuse={(typed) => meaningRefusal(field, typed, system)}
    />
  );
}

function ChoiceEntry({ field, path, wide }: EntryProps<Choice>) {
  const { value, ...entry } = useEntry(path);
  return (
    <ChoiceField
      {...entry}
      label={field.label}
      help={field.help}
      path={path}
      wide={wide}
      options={field.options}
      value={value as string}
    />
  );
}

function SwitchEntry({ field, path, wide }: EntryProps<Switch>) {
  const { value, ...entry } = useEntry(path);
  return (
    <SwitchField
      {...entry}
      label={field.label}
      help={field.help}
      path={path}
      wide={wide}
      value={value as boolean}
    />
  );
}
