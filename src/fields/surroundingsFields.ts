import { added, group, number, numberOrNone, onOff } from "./declare";
import { ZERO_OR_MORE } from "./meaning";

export const airFields = group({
  temperature: number("Air temperature", "temperature", {
    range: [243.15, 333.15],
    default: 293.15,
    help: ["Temperature of the air around the top load.", "Thermometer.", "10 to 30 °C."],
  }),
  pressure: number("Air pressure", "pressure", {
    range: [5e4, 1.1e5],
    default: 101325,
    help: [
      "Pressure of the air; breakout comes earlier in thin air.",
      "Barometer, not reduced to sea level.",
      "1013 hPa at sea level, 900 hPa at 1000 m.",
    ],
  }),
});

/** The coil's surroundings; an empty distance means that there is nothing there. */
export const roomFields = group({
  ceilingHeight: numberOrNone("Ceiling height", "length", {
    range: [0.5, 50],
    default: 4.2,
    help: [
      "Height of the ceiling above the ground plane; empty outdoors.",
      "Rule or laser.",
      "Top load's height plus twice the spark length.",
    ],
  }),
  wallDistance: numberOrNone("Wall distance", "length", {
    range: [0.3, 100],
    default: 3.5,
    help: ["Axis to the nearest wall; empty outdoors.", "Rule or laser.", "At least twice the spark length."],
  }),
  audienceDistance: numberOrNone("Audience distance", "length", {
    range: [0.5, 500],
    default: 5,
    help: [
      "Axis to the nearest person.",
      "Rule or laser, to the barrier.",
      "Several spark lengths; local rules decide.",
    ],
  }),
  ceilingConducts: added(
    onOff("Ceiling conducts", false, [
      "Whether the ceiling is a grounded surface in the electric field; its clearance is checked either way.",
      "Metal deck or reinforcement: on; plaster or timber: off.",
      "Off.",
    ]),
  ),
  wallConducts: added(
    onOff("Walls conduct", false, [
      "Whether the walls are a grounded cylinder in the electric field; their clearance is checked either way.",
      "Metal cladding or a cage: on.",
      "Off.",
    ]),
  ),
});

/** Corrections of the model that a design may switch on. */
export const correctionsFields = added(
  group({
    former: added(
      onOff("Dielectric former", false, [
        "Lets the former's permittivity lower the resonance.",
        "From the wall and permittivity of the former.",
        "−0.06 to −0.14 % in frequency.",
      ]),
    ),
    floorConducts: added(
      onOff("Image currents in the floor", false, [
        "Treats the floor as a perfect conductor for magnetic flux as well.",
        "Only for a metal floor directly under the coil.",
        "+0.2 to +0.33 % in frequency.",
      ]),
    ),
    wireCurrent: added(
      onOff("Skin effect on inductance", false, [
        "Lowers the secondary's inductance by the internal inductance that the skin effect removes.",
        "Follows from the frequency.",
        "+0.03 to +0.05 % in frequency.",
      ]),
    ),
    lossAllowance: added(
      number("Loss allowance", "percent", {
        range: [0, 2],
        default: 0,
        meaning: ZERO_OR_MORE,
        help: [
          "Share of each computed loss that is added for losses not modelled.",
          "Compare a measured Q with the computed one.",
          "0; 10 to 40 % comes close to real coils.",
        ],
      }),
    ),
  }),
);
