/**
 * Diameter of bare wire of an American wire gauge, m: d = 0.127 mm · 92^((36 − n)/39).
 * @param number gauge number; 0 for No. 0, −1 for 00, −2 for 000, −3 for 0000
 * @see ASTM B258: No. 36 is 0.0050 in and No. 0000 is 0.4600 in, with 39 equal ratios between them
 */
export function wireGaugeDiameter(number: number): number {
  return 0.127e-3 * 92 ** ((36 - number) / 39);
}
