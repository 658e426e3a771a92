/** A subscript or superscript as the register writes it: `L_p`, `z_{mid}`, `∫₀^2π`. */
const INDEX = /([_^](?:\{[^}]+\}|[\p{Lu}\p{Ll}\p{Nd}]+(?:,\p{Ll}+)?))/u;

function Part({ text }: { text: string }) {
  const index = text.slice(1).replace(/[{}]/g, "");
  if (text.startsWith("_")) return <sub>{index}</sub>;
  if (text.startsWith("^")) return <sup>{index}</sup>;
  return text;
}

/** Symbols and equations with subscripts and superscripts. */
export function Symbols({ text }: { text: string }) {
  return text.split(INDEX).map((part, place) => <Part key={place} text={part} />);
}
