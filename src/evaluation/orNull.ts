/** Results that are null together, such as those with bursts if there is no burst. */
export type OrNull<Results> = { [Name in keyof Results]: Results[Name] | null };
