import { group, number, optional } from "./declare";
import { ZERO_OR_MORE } from "./meaning";

/** Turns; a hundredth of a turn is 3.6°. The step of the tap's arrow keys and of its slider. */
export const TAP_STEP = 0.01;

/** The primary's conductor, its tap and its rail; the tank's leads with it. */
export const primaryFields = group({
  innerRadius: number("Inner radius", "length", {
    range: [0.02, 2],
    default: 0.105,
    help: [
      "Axis to the conductor's centre at the start of the winding.",
      "Rule from the axis to the inside of the first turn, plus half the tube diameter.",
      "Former radius plus 25 to 60 mm.",
    ],
  }),
  turns: number("Turns", "turns", {
    range: [1, 40],
    default: 8,
    help: [
      "Total number of turns wound.",
      "Count along one radius from the start.",
      "5 to 12; a turn or two more than the tap needs.",
    ],
  }),
  tap: number("Tap", "turns", {
    range: [0.5, 40],
    default: 6.2,
    step: TAP_STEP,
    help: [
      "Position of the tank's clip, in turns from the inner start.",
      "Count whole turns, then the angle on the last one: 90° is a quarter turn.",
      "Where the primary meets the tuning aim.",
    ],
  }),
  pitch: number("Pitch", "smallLength", {
    range: [0.003, 0.1],
    default: 0.0145,
    help: [
      "Centre to centre of neighbouring turns, along the slope.",
      "Rule over all turns, divided by their number less one.",
      "1.3 to 2 tube diameters.",
    ],
  }),
  inclinationDegrees: number("Inclination", "degrees", {
    range: [0, 90],
    default: 0,
    meaning: ZERO_OR_MORE,
    help: [
      "Slope of the winding: 0° is a flat spiral, 90° a helix, anything between a cone.",
      "Protractor on one of the supports.",
      "0 to 30°; helical for tight coupling at low height.",
    ],
  }),
  tubeDiameter: number("Tube diameter", "smallLength", {
    range: [0.001, 0.05],
    default: 0.0095,
    help: ["Outside diameter of the copper tube.", "Calliper.", "6 to 12 mm."],
  }),
  wallThickness: number("Wall thickness", "smallLength", {
    range: [0.0002, 0.025],
    default: 0.0008,
    help: [
      "Wall of the tube; half the diameter for solid wire.",
      "Calliper at a cut end.",
      "0.7 to 1 mm; several skin depths.",
    ],
  }),
  baseHeight: number("Base height", "length", {
    range: [0.005, 5],
    default: 0.1,
    help: [
      "Height of the conductor's centre above the ground plane at the start of the winding.",
      "Rule from the ground plane to the tube's underside, plus half the tube diameter.",
      "Level with the lowest turn of the secondary, or a little below.",
    ],
  }),
  leadInductance: number("Lead inductance", "inductance", {
    range: [0, 2e-5],
    default: 6e-7,
    meaning: ZERO_OR_MORE,
    help: [
      "Inductance of bank, bridge and leads in series with the primary.",
      "LCR meter across the tank loop with the primary shorted at the start, or about 1 µH per metre of loop.",
      "0.3 to 1.5 µH.",
    ],
  }),
  strikeRail: optional({
    radius: number("Rail radius", "length", {
      range: [0.03, 3],
      default: 0.245,
      help: [
        "Axis to the strike rail's centre line.",
        "Rule from the axis to the rail.",
        "Just outside the primary's last turn.",
      ],
    }),
    tubeDiameter: number("Rail tube", "smallLength", {
      range: [0.001, 0.05],
      default: 0.0095,
      help: ["Outside diameter of the rail's tube.", "Calliper.", "As the primary's."],
    }),
    height: number("Rail height", "length", {
      range: [0.005, 5],
      default: 0.16,
      help: [
        "Height of the rail's centre line above the ground plane. The rail is an open ring; a closed one would be a shorted turn.",
        "Rule from the ground plane.",
        "40 to 80 mm above the primary.",
      ],
    }),
  }),
});
