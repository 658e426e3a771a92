/** A finite number, or null, as for a limit that is never reached or a quality factor without loss. */
export function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
