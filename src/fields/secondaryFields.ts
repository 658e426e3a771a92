import { added, choice, group, number, numberOrNone } from "./declare";
import { ZERO_OR_MORE } from "./meaning";

/** The winding and its former; heights are above the ground plane. */
export const secondaryFields = group({
  formerDiameter: number("Former diameter", "length", {
    range: [0.02, 1.5],
    default: 0.125,
    help: [
      "Outside diameter of the tube on which the wire is wound.",
      "Wrap a strip of paper round the tube and divide its length by π.",
      "75 to 320 mm; about a quarter of the winding length.",
    ],
  }),
  windingLength: number("Winding length", "length", {
    range: [0.03, 6],
    default: 0.56,
    help: [
      "From the first turn to the last, along the former: turns times pitch.",
      "Rule along the finished winding; before winding, turns times the overall wire diameter plus 1 to 3 %.",
      "Three to five former diameters.",
    ],
  }),
  turns: number("Turns", "turns", {
    range: [50, 5000],
    default: 1480,
    help: [
      "Number of turns of the secondary.",
      "Count the turns in a centimetre under a lens and multiply, or read the turns counter.",
      "800 to 2000.",
    ],
  }),
  wire: group({
    material: choice(
      "Wire material",
      ["copper", "aluminium"],
      ["Metal of the conductor.", "From the reel's label; aluminium is much lighter.", "Copper."],
    ),
    conductorDiameter: number("Conductor diameter", "wireDiameter", {
      range: [0.00005, 0.005],
      default: 0.000335,
      help: [
        "Diameter of the bare metal; it determines the resistance. A gauge such as AWG 28 may be typed.",
        "Micrometer on a piece with the enamel burnt or scraped off, or the reel's label.",
        "0.2 to 0.8 mm.",
      ],
    }),
    overallDiameter: number("Overall diameter", "wireDiameter", {
      range: [0.00006, 0.006],
      default: 0.000371,
      help: [
        "Diameter over the enamel; it determines how many turns fit.",
        "Micrometer over the enamel, or ten turns side by side divided by ten.",
        "6 to 15 % more than the conductor diameter.",
      ],
    }),
  }),
  baseHeight: number("Base height", "length", {
    range: [0.005, 5],
    default: 0.11,
    meaning: ZERO_OR_MORE,
    help: [
      "Height of the lowest turn above the ground plane.",
      "Rule from the floor, or from the plate used as ground plane, to the first turn.",
      "50 to 500 mm, level with the primary or a little above it.",
    ],
  }),
  formerWall: added(
    number("Former wall", "smallLength", {
      range: [0.0005, 0.02],
      default: 0.003,
      help: [
        "Wall thickness of the former, for the correction for its permittivity.",
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
        "Data sheet of the plastic.",
        "PVC 3.0 to 3.5, polyethylene 2.3, acrylic 2.6 to 3.5, glass fibre 4.5.",
      ],
    }),
  ),
  windingTemperature: added(
    number("Winding temperature", "temperature", {
      range: [253.15, 423.15],
      default: 313.15,
      help: [
        "Temperature of the wire in operation; resistance rises by 0.4 % per kelvin.",
        "Infrared thermometer just after a run, with everything off and discharged.",
        "20 to 60 °C.",
      ],
    }),
  ),
  measuredQ: numberOrNone("Measured Q", "ratio", {
    range: [10, 2000],
    default: null,
    help: [
      "Measured quality factor; it replaces the computed one.",
      "Half-power bandwidth at the resonance with a loosely coupled generator, or the decay of the ring-down.",
      "80 to 300 with top load and no spark.",
    ],
  }),
  measuredResonance: numberOrNone("Measured resonance", "frequency", {
    range: [5e3, 5e6],
    default: null,
    help: [
      "Measured resonance with the top load on and no spark; the suggested tap then follows it.",
      "Generator at the base through a resistor, a probe a metre away, primary open; read the peak.",
      "40 to 400 kHz.",
    ],
  }),
});
