/** All fields of one coil's design, in the order of the document. */
import { interrupterFields, sparkFields, tuningAimFields } from "./burstFields";
import { group } from "./declare";
import { driveFields } from "./driveFields";
import { primaryFields } from "./primaryFields";
import { secondaryFields } from "./secondaryFields";
import { airFields, correctionsFields, roomFields } from "./surroundingsFields";
import { tankFields } from "./tankFields";
import { topLoadFields } from "./topLoadFields";

export const designFields = group({
  air: airFields,
  room: roomFields,
  secondary: secondaryFields,
  topLoad: topLoadFields,
  primary: primaryFields,
  tank: tankFields,
  drive: driveFields,
  interrupter: interrupterFields,
  spark: sparkFields,
  tuningAim: tuningAimFields,
  corrections: correctionsFields,
});
