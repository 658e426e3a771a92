/** The response against frequency, with points where the curves bend. */
import { magnitude } from "../linear/complex";
import { type Network, sineResponse } from "./network";

export interface ResponseSample {
  /** Hz */
  frequency: number;
  topVoltagePerVolt: number;
  inputImpedance: { magnitude: number /** rad */; phase: number };
}

function sample(network: Network, frequency: number): ResponseSample {
  const { inputImpedance, topVoltagePerVolt } = sineResponse(network, frequency);
  return {
    frequency,
    topVoltagePerVolt: magnitude(topVoltagePerVolt),
    inputImpedance: {
      magnitude: magnitude(inputImpedance),
      phase: Math.atan2(inputImpedance.im, inputImpedance.re),
    },
  };
}

/** Distance of the middle from the straight line on log paper, in decades. */
function bend(a: ResponseSample, b: ResponseSample, c: ResponseSample): number {
  const off = (value: (each: ResponseSample) => number): number =>
    Math.abs(Math.log10(value(b)) - 0.5 * (Math.log10(value(a)) + Math.log10(value(c))));
  return Math.max(
    off((each) => each.topVoltagePerVolt),
    off((each) => each.inputImpedance.magnitude),
  );
}

/** A bend that is not seen on a chart, decades. */
const STRAIGHT = 0.004;

/**
 * Samples between two frequencies, halving intervals where the curves bend.
 * @param frequencies Hz, rising, where to begin: the ends and the poles at least
 * @param most number of samples
 */
export function responseCurve(
  network: Network,
  frequencies: readonly number[],
  most: number,
): ResponseSample[] {
  let samples = frequencies.map((frequency) => sample(network, frequency));
  let growing = true;
  while (growing && samples.length < most) {
    const next = [samples[0]];
    growing = false;
    for (let index = 1; index < samples.length; index++) {
      const [a, c] = [samples[index - 1], samples[index]];
      const middle = sample(network, 0.5 * (a.frequency + c.frequency));
      const wanted = bend(a, middle, c) > STRAIGHT && next.length + samples.length - index < most;
      if (wanted) next.push(middle);
      growing ||= wanted;
      next.push(c);
    }
    samples = next;
  }
  return samples;
}
