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
      "Pressure of the air; thin air breaks out earlier.",
      "Barometer, not reduced to sea level.",
      "1013 hPa at the sea, 900 hPa at 1000 m.",
    ],
  }),
});

/** What stands around the coil; a distance that is none is absent. */
export const roomFields = group({
  ceilingHeight: numberOrNone("Ceiling height", "length", {
    range: [0.5, 50],
    default: 4.2,
    help: [
      "Ceiling above the ground plane; none in the open.",
      "Rule or laser.",
      "Top load's height plus twice the spark.",
    ],
  }),
  wallDistance: numberOrNone("Wall distance", "length", {
    range: [0.3, 100],
    default: 3.5,
    help: ["Axis to the nearest wall; none in the open.", "Rule or laser.", "At least twice the spark."],
  }),
  audienceDistance: numberOrNone("Audience distance", "length", {
    range: [0.5, 500],
    default: 5,
    help: [
      "Axis to the nearest person.",
      "Rule or laser, to the barrier.",
      "Several sparks' length; local rules decide.",
    ],
  }),
  ceilingConducts: added(
    onOff("Ceiling conducts", false, [
      "Whether the ceiling enters the electric field as a grounded surface; its clearance is judged either way.",
      "Metal deck or reinforcement: yes; plaster or timber: no.",
      "Off.",
    ]),
  ),
  wallConducts: added(
    onOff("Walls conduct", false, [
      "Whether the walls enter the electric field as a grounded cylinder; their clearance is judged either way.",
      "Metal cladding or a cage: yes.",
      "Off.",
    ]),
  ),
});

/** The corrections of the model that a design may switch. */
export const correctionsFields = added(
  group({
    former: added(
      onOff("Dielectric former", false, [
        "Lets the former's permittivity lower the resonance.",
        "Wall and permittivity of the former.",
        "−0.06 to −0.14 % in frequency.",
      ]),
    ),
    floorConducts: added(
      onOff("Floor carries flux away", false, [
        "Takes the floor as a perfect conductor for magnetic flux as well.",
        "Only for a metal floor right under the coil.",
        "+0.2 to +0.33 % in frequency.",
      ]),
    ),
    wireCurrent: added(
      onOff("Skin effect on inductance", false, [
        "Lowers the secondary's inductance by what the skin effect takes out of the wire.",
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
          "Part of each computed loss that is added for what is not modelled.",
          "Compare a measured Q with the computed one.",
          "0; 10 to 40 % brings it near real coils.",
        ],
      }),
    ),
  }),
);
