/** The cautions of the first start and of the build sheet, one text for both. */

export interface Caution {
  /** kebab-case, never renamed */
  code: string;
  title: string;
  sentence: string;
}

export const cautions: readonly Caution[] = [
  {
    code: "lethal-voltage",
    title: "Lethal voltage",
    sentence:
      "The rectified mains bus, the bridge and the primary circuit kill at the first touch; never work on them live or alone.",
  },
  {
    code: "stored-energy",
    title: "Stored energy",
    sentence:
      "Reservoir and tank capacitors stay charged after switching off; discharge them, measure, and short them before touching.",
  },
  {
    code: "rf-burns",
    title: "RF burns",
    sentence:
      "Sparks and high-frequency current burn deep without warning; nobody and nothing conductive comes within reach of the coil.",
  },
  {
    code: "fire",
    title: "Fire",
    sentence:
      "Sparks ignite whatever burns, and overheated parts fail in flames; clear the space above and around the coil, and keep a fire extinguisher for electrical fires at hand.",
  },
  {
    code: "ozone",
    title: "Ozone and nitrogen oxides",
    sentence: "Sparks produce gases that harm the lungs; ventilate, and keep runs short in closed rooms.",
  },
  {
    code: "noise",
    title: "Noise",
    sentence: "Sparks are loud enough to harm hearing; protect your own ears and keep the audience away.",
  },
  {
    code: "pacemakers",
    title: "Pacemakers and implants",
    sentence:
      "The field can disturb pacemakers, pumps and hearing aids; people who wear them stay out of the room, and the audience is warned beforehand.",
  },
  {
    code: "electronics",
    title: "Electronics",
    sentence:
      "Phones, computers and instruments near the coil, or on the same mains, can be disturbed or destroyed.",
  },
];

export const practiceSentence =
  "Local electrical, fire and radio codes and licensed practice decide what may be built and shown, not this program: " +
  "have mains wiring, earthing and the show approved by those who are licensed to do so.";

export const limitsSentence =
  "Every figure here is calculated from what was typed in. None shows that a coil is safe. Keep an accessible emergency stop and someone at it.";
