/**
 * What the calculation rests on: each work once, by key. Docstrings (“Source: grover1946, ch. 12.”), the register
 * of results and the theory page give key and place; how a work is written out is decided here alone.
 */

/** Whether a work was read, or is given from memory and should be looked up before one relies on its place. */
type Knowledge =
  | { known: "read" | "from memory" }
  /** `read`: what of it was read, and where if not in the work itself; the rest is from memory */
  | { known: "partly read"; read: string };

export type Work = Knowledge & {
  authors?: string;
  /** of the book, standard or journal with its volume */
  title?: string;
  year?: number;
  /** first page of a paper */
  page?: number;
};

/** In the order of their keys. */
export const WORKS = {
  abramowitzStegun: {
    authors: "M. Abramowitz, I. A. Stegun",
    title: "Handbook of Mathematical Functions",
    known: "from memory",
  },
  butterworth1922: {
    authors: "S. Butterworth",
    title: "Phil. Trans. A 222",
    year: 1922,
    known: "from memory",
  },
  catmullRom1974: {
    authors: "Catmull, Rom",
    title: "Computer Aided Geometric Design",
    year: 1974,
    page: 317,
    known: "from memory",
  },
  codata2018: { title: "CODATA", year: 2018, known: "from memory" },
  courantHilbert: {
    authors: "R. Courant, D. Hilbert",
    title: "Methods of Mathematical Physics I",
    known: "from memory",
  },
  crcHandbook: { title: "CRC Handbook of Chemistry and Physics", known: "from memory" },
  golubVanLoan: {
    authors: "G. H. Golub, C. F. Van Loan",
    title: "Matrix Computations",
    known: "from memory",
  },
  grover1946: {
    authors: "F. W. Grover",
    title: "Inductance Calculations",
    year: 1946,
    known: "from memory",
  },
  harrington1968: {
    authors: "R. F. Harrington",
    title: "Field Computation by Moment Methods",
    year: 1968,
    known: "from memory",
  },
  higham2008: {
    authors: "N. J. Higham",
    title: "Functions of Matrices",
    year: 2008,
    known: "from memory",
  },
  hildebrand: {
    authors: "F. B. Hildebrand",
    title: "Introduction to Numerical Analysis",
    known: "from memory",
  },
  iec60028: {
    title: "IEC 60028, International standard of resistance for copper",
    year: 1925,
    known: "partly read",
    read: "resistivity and temperature coefficient, as a handbook and a summary give them",
  },
  iec60062: { title: "IEC 60062", known: "from memory" },
  iec60063: {
    title: "IEC 60063",
    year: 2015,
    known: "partly read",
    read: "the E24 series, as public tables give it",
  },
  iec60204: {
    title: "IEC 60204-1",
    year: 2016,
    known: "partly read",
    read: "6.2.4, in a summary clause by clause",
  },
  iec60269: { title: "IEC 60269-1", known: "from memory" },
  iec60317: {
    title: "IEC 60317-0-1",
    year: 2013,
    known: "partly read",
    read: "the largest overall diameters, as two public tables give them",
  },
  iec60747: {
    title: "IEC 60747-9",
    known: "partly read",
    read: "the definition of transient thermal impedance, as a maker's application note gives it",
  },
  iec60889: { title: "IEC 60889", known: "from memory" },
  iec61010: { title: "IEC 61010-1", year: 2010, known: "from memory" },
  iso16: {
    title: "ISO 16, standard tuning frequency",
    year: 1975,
    known: "partly read",
    read: "440 Hz and the notes that follow from it, in public tables",
  },
  jackson: { authors: "J. D. Jackson", title: "Classical Electrodynamics", known: "from memory" },
  kress1989: { authors: "R. Kress", title: "Linear Integral Equations", year: 1989, known: "from memory" },
  landauLifshitz: { authors: "L. D. Landau, E. M. Lifshitz", title: "Mechanics", known: "from memory" },
  masonHandscomb2003: {
    authors: "J. C. Mason, D. C. Handscomb",
    title: "Chebyshev Polynomials",
    year: 2003,
    known: "from memory",
  },
  maxwell1873: {
    authors: "J. C. Maxwell",
    title: "Treatise on Electricity and Magnetism",
    year: 1873,
    known: "from memory",
  },
  microsoft1991: {
    authors: "Microsoft, IBM",
    title: "Multimedia Programming Interface and Data Specifications 1.0",
    year: 1991,
    known: "from memory",
  },
  midi: { title: "MIDI 1.0 Detailed Specification", known: "from memory" },
  muller1956: {
    authors: "D. E. Muller",
    title: "Mathematical Tables and Other Aids to Computation 10",
    year: 1956,
    page: 208,
    known: "from memory",
  },
  nistDlmf: {
    title: "NIST Digital Library of Mathematical Functions",
    known: "partly read",
    read: "sec. 19.34 alone",
  },
  peek1929: {
    authors: "F. W. Peek",
    title: "Dielectric Phenomena in High-Voltage Engineering",
    year: 1929,
    known: "partly read",
    read: "the law for parallel wires, as an encyclopedia gives it; that for spheres was not",
  },
  ramo: {
    authors: "S. Ramo, J. R. Whinnery, T. Van Duzer",
    title: "Fields and Waves in Communication Electronics",
    known: "from memory",
  },
  rayleigh1892: {
    authors: "Rayleigh",
    title: "Philosophical Magazine 34",
    year: 1892,
    page: 481,
    known: "from memory",
  },
  rayleighSound: { authors: "Rayleigh", title: "Theory of Sound", known: "from memory" },
  rfc1951: { title: "RFC 1951", known: "from memory" },
  rfc4180: { title: "RFC 4180", known: "from memory" },
  rosaGrover1912: {
    authors: "E. B. Rosa, F. W. Grover",
    title: "Bulletin of the Bureau of Standards 8",
    year: 1912,
    known: "from memory",
  },
  schade1943: {
    authors: "O. H. Schade",
    title: "Proc. IRE 31",
    year: 1943,
    page: 341,
    known: "from memory",
  },
  smythe1950: {
    authors: "W. R. Smythe",
    title: "Static and Dynamic Electricity",
    year: 1950,
    known: "from memory",
  },
  standardMidiFiles: {
    title: "Standard MIDI Files 1.0 (RP-001)",
    year: 1996,
    known: "partly read",
    read: "header, events and the example files, in public notes and transcriptions",
  },
  stratton1941: {
    authors: "J. A. Stratton",
    title: "Electromagnetic Theory",
    year: 1941,
    known: "from memory",
  },
  terman1943: {
    authors: "F. E. Terman",
    title: "Radio Engineers' Handbook",
    year: 1943,
    known: "from memory",
  },
  thomson1853: { authors: "W. Thomson", year: 1853, known: "from memory" },
  trefethenWeideman2014: {
    authors: "L. N. Trefethen, J. A. C. Weideman",
    title: "SIAM Review 56",
    year: 2014,
    page: 385,
    known: "from memory",
  },
} satisfies Record<string, Work>;

export type WorkKey = keyof typeof WORKS;

/** What something rests on that no work is cited for. */
export const GROUNDS = {
  circuitTheory: "circuit theory",
  commonPractice: "common practice, no source",
  dataSheet: "data sheet",
  definition: "definition",
  fieldTheory: "field theory",
  geometry: "geometry",
  orderOfMagnitude: "an order of magnitude, no source",
  ownModel: "the program's own model",
};

export type GroundKey = keyof typeof GROUNDS;
