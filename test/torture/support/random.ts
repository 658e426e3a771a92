/** Numbers that look random and are the same for the same seed (Mulberry32, T. Ettinger, public domain). */
export interface Random {
  /** 0 … 1 */
  next(): number;
  between(least: number, most: number): number;
  whole(least: number, most: number): number;
  pick<Thing>(things: readonly Thing[]): Thing;
}

export function newRandom(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (least: number, most: number) => least + (most - least) * next();
  const whole = (least: number, most: number) => Math.floor(between(least, most + 1));
  return { next, between, whole, pick: (things) => things[whole(0, things.length - 1)] };
}
