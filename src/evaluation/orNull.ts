/** Results that are null together, as what stands under a burst while there is none. */
export type OrNull<Results> = { [Name in keyof Results]: Results[Name] | null };
