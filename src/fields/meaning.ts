/** The values that a number can have: any other is refused, never adjusted. */
export interface Meaning {
  minimum: number;
  /** whether the minimum itself is excluded */
  aboveMinimum: boolean;
  maximum: number;
  whole: boolean;
}

const ANY: Meaning = {
  minimum: Number.NEGATIVE_INFINITY,
  aboveMinimum: false,
  maximum: Number.POSITIVE_INFINITY,
  whole: false,
};

export const ZERO_OR_MORE: Meaning = { ...ANY, minimum: 0 };
export const POSITIVE: Meaning = { ...ZERO_OR_MORE, aboveMinimum: true };
export const POSITIVE_WHOLE: Meaning = { ...POSITIVE, whole: true };

/** Both ends included. */
export function between(minimum: number, maximum: number): Meaning {
  return { ...ANY, minimum, maximum };
}

export function wholeBetween(minimum: number, maximum: number): Meaning {
  return { ...between(minimum, maximum), whole: true };
}

export function hasMeaning({ minimum, aboveMinimum, maximum, whole }: Meaning, value: number): boolean {
  if (!Number.isFinite(value) || value < minimum || value > maximum) return false;
  return !(aboveMinimum && value === minimum) && (!whole || Number.isInteger(value));
}
