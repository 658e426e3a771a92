/** Complex numbers as plain data. */
export interface Complex {
  re: number;
  im: number;
}

export function complex(re: number, im = 0): Complex {
  return { re, im };
}

export function add(a: Complex, b: Complex): Complex {
  return { re: a.re + b.re, im: a.im + b.im };
}

export function subtract(a: Complex, b: Complex): Complex {
  return { re: a.re - b.re, im: a.im - b.im };
}

export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

export function divide(a: Complex, b: Complex): Complex {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
}

export function square(a: Complex): Complex {
  return { re: a.re * a.re - a.im * a.im, im: 2 * a.re * a.im };
}

/** The square root whose real part is not negative. */
export function squareRoot(a: Complex): Complex {
  const size = magnitude(a);
  const re = Math.sqrt(0.5 * (size + Math.abs(a.re)));
  const im = re === 0 ? 0 : a.im / (2 * re);
  return a.re >= 0 ? { re, im } : { re: Math.abs(im), im: a.im < 0 ? -re : re };
}

export function scale(a: Complex, factor: number): Complex {
  return { re: a.re * factor, im: a.im * factor };
}

export function magnitude(a: Complex): number {
  return Math.hypot(a.re, a.im);
}
