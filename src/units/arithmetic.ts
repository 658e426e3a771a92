/**
 * Simple arithmetic in a number field: + − * / ( ), mixed fractions such as `1 1/2`, decimal point or
 * comma, exponents. It has its own parser, because the page's security policy forbids evaluating text.
 */

export type Reading = { ok: true; value: number; rest: string } | { ok: false; message: string };

const NUMBER = /^(\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE]([+-]?\d+))?/;
const FRACTION = /^\s+(\d+)\s*\/\s*(\d+)/;
const DEEPEST = 20;

class Unreadable extends Error {}

/** Walks the text; each method reads one level of precedence. */
class Expression {
  #rest: string;
  #depth = 0;

  constructor(text: string) {
    this.#rest = text;
  }

  get rest(): string {
    return this.#rest.trim();
  }

  #take(pattern: RegExp): RegExpExecArray | null {
    const match = pattern.exec(this.#rest);
    if (match) this.#rest = this.#rest.slice(match[0].length);
    return match;
  }

  sum(): number {
    let value = this.#product();
    for (let sign = this.#take(/^\s*([+\-−])/); sign; sign = this.#take(/^\s*([+\-−])/)) {
      const term = this.#product();
      value += sign[1] === "+" ? term : -term;
    }
    return value;
  }

  #product(): number {
    let value = this.#factor();
    for (let sign = this.#take(/^\s*([*×·/÷])/); sign; sign = this.#take(/^\s*([*×·/÷])/)) {
      const factor = this.#factor();
      value = sign[1] === "/" || sign[1] === "÷" ? value / factor : value * factor;
    }
    return value;
  }

  #factor(): number {
    if (this.#take(/^\s*[-−]/)) return -this.#nested(() => this.#factor());
    if (this.#take(/^\s*\+/)) return this.#nested(() => this.#factor());
    if (this.#take(/^\s*\(/)) {
      const value = this.#nested(() => this.sum());
      if (!this.#take(/^\s*\)/)) throw new Unreadable("a bracket is not closed");
      return value;
    }
    return this.#number();
  }

  #nested(read: () => number): number {
    this.#depth++;
    if (this.#depth > DEEPEST) throw new Unreadable("it is nested too deeply");
    const value = read();
    this.#depth--;
    return value;
  }

  #number(): number {
    this.#take(/^\s+/);
    const match = this.#take(NUMBER);
    if (!match)
      throw new Unreadable(
        this.rest === "" ? "a number is missing at the end" : `“${this.rest}” is not a number`,
      );
    const value = Number(match[1].replace(",", ".")) * 10 ** Number(match[2] ?? 0);
    const whole = !/[.,eE]/.test(match[0]);
    const fraction = whole ? this.#take(FRACTION) : null;
    return fraction ? value + Number(fraction[1]) / Number(fraction[2]) : value;
  }
}

/**
 * Reads an expression at the start of a text and returns it with the remaining text.
 * @param text the user's input
 */
export function readArithmetic(text: string): Reading {
  const expression = new Expression(text);
  try {
    const value = expression.sum();
    if (!Number.isFinite(value)) return { ok: false, message: "the result is not a finite number" };
    return { ok: true, value, rest: expression.rest };
  } catch (reason) {
    if (reason instanceof Unreadable) return { ok: false, message: reason.message };
    throw reason;
  }
}
