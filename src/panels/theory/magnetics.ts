import { cite } from "../../evaluation/register/source";
import type { TheorySection } from "./section";

export const MAGNETIC_FIELD: TheorySection = {
  id: "magnetic-field",
  title: "Magnetic field and primary",
  models: [
    {
      title: "Circles",
      words:
        "Two coaxial circles share Maxwell's mutual inductance, computed with the arithmetic–geometric mean which avoids cancellation for circles far apart or close together. Circles on parallel axes, for two coils side by side, need Neumann's integral.",
      equations: [
        "M = μ₀D·[(1 − m/2)·K(m) − E(m)],  D² = (a + b)² + d²,  m = 4ab/D²",
        "L = μ₀R·[ln(8R/ρ) − 2 + Y]",
        "M = (μ₀/4π)·∮∮ ds₁·ds₂/|r₁ − r₂|",
      ],
      symbols:
        "K, E complete elliptic integrals, ρ wire radius, Y = ¼ for current that fills the wire, 0 on its surface.",
      source: [
        cite("maxwell1873", "art. 701"),
        cite("rosaGrover1912", "eqs. (63), (65)"),
        cite("abramowitzStegun", "17.6"),
      ],
      results: [],
    },
    {
      title: "The winding and its sections",
      words:
        "With equal radii the mutual inductance of two turns depends on their distance alone. One table of the inductance of n neighbouring turns then gives the whole winding and, as second differences, the matrix of its sections, which may cut a turn.",
      equations: ["M(first i, first j) = ½·[L(i) + L(j) − L(|i − j|)]"],
      symbols: "L(n) inductance of n neighbouring turns.",
      source: [cite("rosaGrover1912", "p. 122")],
      results: ["secondary.inductance"],
    },
    {
      title: "The spiral and its tap",
      words:
        "Flat, conical and helical primaries are one spiral with an inclination. Its inductance is Neumann's integral along the conductor, smooth in the tap; where the conductor passes close to itself, the peak is integrated in closed form.",
      equations: ["L(T) = (μ₀/4π)·2∫₀ᵀ ∫₀ᵗ r′(t)·r′(s)/|r(t) − r(s)| ds dt"],
      symbols:
        "T tap as an angle; within a turn the distance is √(d² + ρ²), the geometric mean distance of a surface current.",
      source: [cite("grover1946", "ch. 1 and 3")],
      results: ["primary.lowFrequencyInductance", "primary.resonance"],
    },
    {
      title: "Current crowding on the tube",
      words:
        "At the working frequency the tube is a perfect conductor: its current stays on the surface and is distributed so that no flux enters. The flux function is constant on each turn, which makes it the magnetic counterpart of the charge problem. The ratio of this solution to that for simple circles multiplies the spiral's inductance; turns beyond the tap carry no net current.",
      equations: ["ψ(r, z) = Σ M(r, z; r′, z′)·K′ ds′ = const on each turn,  ∮ K ds = I of the turn"],
      symbols: "ψ flux through the circle at (r, z), K surface current.",
      source: [cite("kress1989", "sec. 12.3"), cite("smythe1950", "sec. 8.06")],
      results: ["primary.inductance", "primary.fullInductance", "primary.freeEndVoltage"],
    },
    {
      title: "Leads",
      words:
        "If only the length and spacing of the leads are known, they are modelled as a two-wire line without its ends.",
      equations: ["L = (μ₀ℓ/π)·arcosh(D/2ρ)"],
      symbols: "ℓ length of the pair, D spacing, ρ radius of a lead.",
      source: [cite("smythe1950", "sec. 4.14, by LC = μ₀ε₀")],
      results: [],
    },
  ],
  checkedBy: [
    "Coaxial circles",
    "Circles with parallel axes",
    "One ring",
    "Current sheets",
    "Windings of round wire",
    "Primary",
  ],
};

export const COUPLING: TheorySection = {
  id: "coupling",
  title: "Coupling",
  models: [
    {
      title: "Primary and secondary",
      words:
        "The flux that circular turns send through an arc is the line integral of r·A along it, so the mutual inductance is smooth in the tap. Each section of the winding is weighted with the mode's current there: this coupling, not that of a uniform current, is what the primary sees.",
      equations: ["M_i = ∮ A_i·dl along the active arc"],
      symbols: "A_i vector potential of section i per ampere.",
      source: [
        cite("grover1946", "ch. 1", "Neumann's integral"),
        cite("terman1943", "sec. 3, generalised by energy"),
      ],
      results: [
        "coupling.mutualInductance",
        "coupling.uniformCurrent",
        "coupling.atResonance",
        "coupling.circuit",
        "secondary.resonancePrimaryShorted",
      ],
    },
    {
      title: "Two coils side by side",
      words:
        "Each coil keeps the currents and charges of its own fundamental; their mutual energies are the coupling, to first order. For windings of the same sense the two parts have opposite signs.",
      equations: [
        "k_m = M₁₂/√(L₁L₂),  k_e = P₁₂·√(C₁C₂)",
        "(ω₁² − ω²)·n₁ + (k_e·ω₁ω₂ − k_m·ω²)·n₂ = 0, and its mirror",
      ],
      symbols: "M₁₂ and P₁₂ mutual inductance and elastance of the modes, n charges of the modes times √L.",
      source: [cite("landauLifshitz", "§ 23"), cite("maxwell1873", "art. 86–87")],
      results: [],
    },
  ],
  checkedBy: ["Coupling"],
};
