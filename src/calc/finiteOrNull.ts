/** A number, or null where it is none: a limit that is never reached, a quality without any loss. */
export function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
