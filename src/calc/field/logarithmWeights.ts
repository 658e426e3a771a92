/**
 * Quadrature weights that integrate a smooth function times a logarithm exactly for the trigonometric
 * polynomials that the nodes can distinguish.
 */

const periodicMemory = new Map<number, Float64Array>();
const openMemory = new Map<number, Float64Array>();

function remembered(
  memory: Map<number, Float64Array>,
  count: number,
  make: (count: number) => Float64Array,
): Float64Array {
  const known = memory.get(count);
  if (known) return known;
  const weights = make(count);
  memory.set(count, weights);
  return weights;
}

function periodic(count: number): Float64Array {
  const half = count / 2;
  return Float64Array.from({ length: count }, (_, difference) => {
    const angle = (2 * Math.PI * difference) / count;
    let sum = 0;
    for (let m = 1; m < half; m++) sum += Math.cos(m * angle) / m;
    return (-2 * Math.PI * sum) / half - (Math.PI * Math.cos(half * angle)) / (half * half);
  });
}

/**
 * Weights for ∫₀^2π ln(4 sin²((t−s)/2)) f(s) ds on equidistant nodes, by the difference of the nodes'
 * numbers.
 *
 * Source: kress1989, sec. 12.3 (Martensen and Kussmaul).
 * @param count even number of nodes
 */
export function periodicLogarithmWeights(count: number): Float64Array {
  return remembered(periodicMemory, count, periodic);
}

/** cos(m·t_i) times a factor of m, row by row in i: the cosines of a sum of count³ terms, each taken once. */
function cosines(count: number, factor: (order: number) => number): Float64Array {
  return Float64Array.from({ length: count * count }, (_, at) => {
    const [node, order] = [Math.floor(at / count), at % count];
    return factor(order) * Math.cos((order * (node + 0.5) * Math.PI) / count);
  });
}

function open(count: number): Float64Array {
  const weights = new Float64Array(count * count);
  const [weighted, plain] = [cosines(count, (order) => 2 / order), cosines(count, () => 1)];
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      let sum = Math.LN2;
      for (let m = 1; m < count; m++) sum += weighted[i * count + m] * plain[j * count + m];
      weights[i * count + j] = (-2 * Math.PI * sum) / count;
    }
  }
  return weights;
}

/**
 * Weights for ∫₀^π ln((cos t − cos s)²) f(s) ds on the nodes (j + ½)π/count, row by row in t: `count`²
 * values.
 *
 * Source: masonHandscomb2003, sec. 9.3: the integral of ln|cos t − cos s|·cos(ns) is −π ln 2 for n = 0 and
 * −(π/n)·cos(nt) otherwise.
 */
export function openLogarithmWeights(count: number): Float64Array {
  return remembered(openMemory, count, open);
}
