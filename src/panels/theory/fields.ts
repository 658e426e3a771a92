import { cite } from "../../evaluation/register/source";
import type { TheorySection } from "./section";

export const ELECTRIC_FIELD: TheorySection = {
  id: "electric-field",
  title: "Electric field",
  models: [
    {
      title: "Charges on all conductors",
      words:
        "Winding, top load, primary and strike rail are surfaces of revolution that carry ring charges; the ground plane is a mirror, a conducting ceiling a second one. The nodes are at equal steps of a parameter in which the charge is smooth, and the kernel's logarithm is integrated exactly, so few nodes suffice.",
      equations: [
        "φ(r, z) = Σ Q·[K(m)/D − K(m*)/D*]/(2π²ε₀)",
        "D² = (r + r′)² + (z − z′)²,  m = 4rr′/D²; * for the image at −z′",
        "∫₀^2π ln(4 sin²((t − s)/2))·f(s) ds = Σ Rⱼ·f(sⱼ)",
      ],
      symbols:
        "K complete elliptic integral of the parameter m, Q charge of a ring, Rⱼ weights of the logarithm.",
      source: [
        cite("smythe1950", "ring of charge"),
        cite("kress1989", "sec. 12.3"),
        cite("masonHandscomb2003", "sec. 9.3"),
      ],
      results: ["topLoad.capacitance"],
    },
    {
      title: "Elimination of conductors at fixed potential",
      words:
        "The winding's charge is a sum of cosines over its length, and the top load has its total charge. Primary, rail and room are at 0 V and the top load is an equipotential: their charges follow from those two and are eliminated, which leaves one small matrix of elastances.",
      equations: [
        "λ(t) = Σ aₙ·cos nt,  z = z_mid − ½ℓ·cos t",
        "P = P_ww − Bᵀ·G⁻¹·B",
        "W_e = ½·qᵀPq,  q = (a₀ … a_{N−1}, Q)",
      ],
      symbols:
        "λ charge of the winding, G potentials of the conductors on themselves, B those of winding charges on them.",
      source: [cite("harrington1968", "ch. 2"), cite("maxwell1873", "art. 86–87")],
      results: [],
    },
    {
      title: "Breakout",
      words:
        "Air breaks down where the field on the surface reaches Peek's critical gradient, which grows with the air's density and with the curvature. A breakout point is modelled as half of a slender spheroid in the field of the smooth surface.",
      equations: [
        "δ = 2.94·10⁻³·p/T",
        "E_tip = E/n,  n the depolarisation factor of the spheroid along its axis",
      ],
      symbols: "p air pressure in Pa, T its temperature in K.",
      source: [cite("peek1929", "ch. 4"), cite("stratton1941", "sec. 3.26–3.27")],
      results: [
        "topLoad.surfaceFieldPerVolt",
        "topLoad.breakoutVoltage",
        "topLoad.breakoutVoltageAtPoint.low",
        "topLoad.breakoutVoltageAtPoint.typical",
        "topLoad.breakoutVoltageAtPoint.high",
      ],
    },
  ],
  checkedBy: ["Capacitance", "Published values", "Charges of whole coils"],
};

export const MODES: TheorySection = {
  id: "modes",
  title: "Modes of the secondary",
  models: [
    {
      title: "A distributed resonator",
      words:
        "The current along the winding decreases by what charges each section. The electric energy of the charges and the magnetic energy of the currents are expressed in the same few functions; where they balance there is a mode.",
      equations: [
        "I(t) = jω·(Q + ∫ₜ^π λ ds) = jω·S·q",
        "W_m = ½·ω²·qᵀSᵀLSq",
        "V(z₂) − V(z₁) = −jω·Σ (L·I) between the two heights",
      ],
      symbols: "S currents of the sections per unit of the charges, L inductance matrix of the sections.",
      source: [
        cite("courantHilbert", "ch. IV", "Ritz method"),
        cite("grover1946", "", "inductances of sections"),
      ],
      results: [
        "secondary.resonance",
        "secondary.bareResonance",
        "secondary.overtones.*",
        "secondary.effectiveCapacitance",
        "secondary.effectiveInductance",
        "secondary.profile.*.voltage",
        "secondary.profile.*.current",
        "secondary.maximumGradientPerVolt",
        "secondary.maximumGradient",
      ],
    },
    {
      title: "Dielectric former",
      words:
        "To first order the field stays as it is and its energy in the former's wall grows by εᵣ − 1. In a thin wall just inside the winding that field is the winding's own gradient.",
      equations: ["ΔC = ε₀(εᵣ − 1)·2πR·w·∫ (dV/dz)² dz / V_top²"],
      symbols: "R radius of the wall's middle, w its thickness.",
      source: [cite("jackson", "sec. 4.7")],
      results: [],
    },
  ],
  checkedBy: ["Modes of the secondary"],
};
