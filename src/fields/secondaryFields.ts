import { added, choice, group, number, numberOrNone } from "./declare";
import { ZERO_OR_MORE } from "./meaning";

/** The winding and its former; heights are above the ground plane. */
export const secondaryFields = group({
  formerDiameter: number("Former diameter", "length", {
    range: [0.02, 1.5],
    default: 0.125,
    help: [
      "Outside diameter of the tube that the wire is wound on.",
      "Wrap a strip of paper round the tube and divide its length by π.",
      "75 to 320 mm; about a quarter of the winding length.",
    ],
  }),
  windingLength: number("Winding length", "length", {
    range: [0.03, 6],
    default: 0.56,
    help: [
      "From the first turn to the last, along the former: turns times pitch.",
      "Rule along the finished winding; before winding, turns times the overall wire diameter and 1 to 3 % more.",
      "Three to five former diameters.",
    ],
  }),
  turns: number("Turns", "turns", {
    range: [50, 5000],
    default: 1480,
    help: [
      "How many turns the secondary has.",
      "Count a centimetre under a lens and multiply, or take the turns counter's reading.",
      "800 to 2000.",
    ],
  }),
  wire: group({
    material: choice(
      "Wire material",
      ["copper", "aluminium"],
      ["What the wire is made of.", "From the reel's label; aluminium is strikingly light.", "Copper."],
    ),
    conductorDiameter: number("Conductor diameter", "wireDiameter", {
      range: [0.00005, 0.005],
      default: 0.000335,
      help: [
        "Diameter of the bare metal; it decides the resistance. A gauge may be typed, as AWG 28.",
        "Micrometer on a piece with the enamel burnt or scraped off, or the reel's label.",
        "0.2 to 0.8 mm.",
      ],
    }),
    overallDiameter: number("Overall diameter", "wireDiameter", {
      range: [0.00006, 0.006],
      default: 0.000371,
      help: [
        "Diameter over the enamel; it decides how many turns fit.",
        "Micrometer over the enamel, or ten turns side by side divided by ten.",
        "6 to 15 % more than the conductor.",
      ],
    }),
  }),
  baseHeight: number("Base height", "length", {
    range: [0.005, 5],
    default: 0.11,
    meaning: ZERO_OR_MORE,
    help: [
      "Height of the lowest turn above the ground plane.",
      "Rule from the floor, or from the plate that serves as ground plane, to the first turn.",
      "50 to 500 mm, level with the primary or a little above it.",
    ],
  }),
  formerWall: added(
    number("Former wall", "smallLength", {
      range: [0.0005, 0.02],
      default: 0.003,
      help: [
        "Wall thickness of the former, for the correction by its permittivity.",
        "Calliper at the tube's end.",
        "2 to 6 mm.",
      ],
    }),
  ),
  formerPermittivity: added(
    number("Former permittivity", "ratio", {
      range: [1, 8],
      default: 3,
      help: [
        "Relative permittivity of the former's material.",
        "From a data sheet of the plastic.",
        "PVC 3.0 to 3.5, polyethylene 2.3, acrylic 2.6 to 3.5, glass fibre 4.5.",
      ],
    }),
  ),
  windingTemperature: added(
    number("Winding temperature", "temperature", {
      range: [253.15, 423.15],
      default: 313.15,
      help: [
        "Temperature of the wire while it plays; resistance rises by 0.4 % a kelvin.",
        "Infrared thermometer just after a run, with everything off and discharged.",
        "20 to 60 °C.",
      ],
    }),
  ),
  measuredQ: numberOrNone("Measured Q", "ratio", {
    range: [10, 2000],
    default: null,
    help: [
      "Quality factor as you measured it; it replaces the computed one.",
      "Bandwidth at half power around the resonance, with a generator loosely coupled, or the ring-down's decay.",
      "80 to 300 with top load and no spark.",
    ],
  }),
  measuredResonance: numberOrNone("Measured resonance", "frequency", {
    range: [5e3, 5e6],
    default: null,
    help: [
      "Resonance with the top load on and no spark, as you measured it; the suggested tap then follows it.",
      "Generator at the base through a resistor, a probe a metre away, primary open; read the peak.",
      "40 to 400 kHz.",
    ],
  }),
});
