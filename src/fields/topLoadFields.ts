import { added, group, list, number, optional, variants } from "./declare";

const MOST_ELEMENTS = 8;

const centreHeight = number("Centre height", "length", {
  range: [0.03, 10],
  default: 0.745,
  help: [
    "Height of the element's centre above the ground plane.",
    "Rule from the ground plane to the underside, plus half the tube diameter.",
    "0.5 to 1 tube diameter above the last turn.",
  ],
});

/** Everything at the potential of the winding's top; without elements the winding has no top load. */
export const topLoadFields = group({
  elements: list(
    variants("shape", {
      toroid: {
        outerDiameter: number("Outer diameter", "length", {
          range: [0.03, 4],
          default: 0.46,
          help: [
            "Overall diameter of the toroid, outside to outside.",
            "Rule across the whole toroid.",
            "Two to five former diameters.",
          ],
        }),
        tubeDiameter: number("Tube diameter", "length", {
          range: [0.005, 1],
          default: 0.11,
          help: [
            "Diameter of the toroid's tube.",
            "Calliper, or the toroid's overall height.",
            "A fifth to a third of the outer diameter; a thicker tube raises the breakout voltage.",
          ],
        }),
        centreHeight,
      },
      sphere: {
        diameter: number("Diameter", "length", {
          range: [0.01, 3],
          default: 0.3,
          help: [
            "Diameter of the sphere.",
            "Wrap a strip of paper round the equator and divide by π.",
            "100 to 600 mm.",
          ],
        }),
        centreHeight,
      },
    }),
    { maxLength: MOST_ELEMENTS },
  ),
  breakoutPoint: optional({
    length: number("Point length", "length", {
      range: [0.002, 1],
      default: 0.08,
      help: [
        "How far the breakout point projects from the top load.",
        "Rule from the surface to the tip.",
        "30 to 150 mm.",
      ],
    }),
    tipRadius: number("Tip radius", "smallLength", {
      range: [0.0001, 0.02],
      default: 0.001,
      help: [
        "Radius of the rounded tip.",
        "Compare the tip with drill shanks; the radius is half the diameter.",
        "0.5 to 3 mm.",
      ],
    }),
  }),
  surfaceFactor: added(
    number("Surface factor", "ratio", {
      range: [0.3, 1],
      default: 1,
      help: [
        "Factor on the critical gradient for a surface that is not smooth and clean.",
        "Compare a measured breakout voltage with the computed one.",
        "1 polished; 0.6 to 0.8 for corrugated ducting and tape (common practice).",
      ],
    }),
  ),
});
