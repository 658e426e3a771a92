/** Physical constants, SI. Source: codata2018. */

/** H/m; 4π·10⁻⁷ to 10 digits since 2019 */
export const MAGNETIC_CONSTANT = 4e-7 * Math.PI;

/** F/m */
export const ELECTRIC_CONSTANT = 8.8541878128e-12;
