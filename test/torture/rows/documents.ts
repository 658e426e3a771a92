/** Harmed files of designs and shows: each is read or refused with sentences, and the score within likewise. */
import { midiScore } from "../../../src/calc/music/midiScore";
import { parseDesign, serialiseDesign } from "../../../src/design/design";
import { exampleShow, pierHallLeft } from "../../../src/design/examples";
import { parseExportedShow, serialiseShow } from "../../../src/design/show";
import type { TortureRow } from "../row";
import { harmed } from "../support/mutations";
import { newRandom, type Random } from "../support/random";
import { mayBeShown, notFinite, runTrials } from "../support/trials";

/** ms */
const LONGEST = 5000;
const MOST_FAULTS = 21;

/** Stands for lists within lists, which the platform's own writer of JSON does not write. */
const DEEP = "deep down";
const DEEP_TEXT = `${"[".repeat(100_000)}${"]".repeat(100_000)}`;

/** What a value may have been made into by a program that writes such files. */
const VALUES: readonly ((random: Random) => unknown)[] = [
  () => null,
  () => "",
  () => "x".repeat(100_000),
  () => [],
  () => ({}),
  () => -1,
  () => 1e300,
  () => 5e-324,
  () => true,
  (random) => random.between(-1e6, 1e6),
  () => DEEP,
  () => Array(10_000).fill(0),
  () => Object.fromEntries(Array.from({ length: 1000 }, (_, index) => [`key${index}`, index])),
  () => JSON.parse('{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}}'),
];

/** A place within the document, one key after another, somewhere on its way down. */
function replaceSomewhere(document: Record<string, unknown>, random: Random): void {
  let at = document;
  for (;;) {
    const key = random.pick(Object.keys(at));
    const inner = at[key];
    const descend = inner !== null && typeof inner === "object" && Object.keys(inner).length > 0;
    if (descend && random.next() < 0.8) at = inner as Record<string, unknown>;
    else {
      if (random.next() < 0.2) delete at[key];
      else at[random.next() < 0.1 ? `${key}?` : key] = random.pick(VALUES)(random);
      return;
    }
  }
}

function withOtherValues(text: string, random: Random): string {
  const document = JSON.parse(text);
  for (let times = random.whole(1, 3); times > 0; times--) replaceSomewhere(document, random);
  return JSON.stringify(document).replaceAll(JSON.stringify(DEEP), DEEP_TEXT);
}

function withOtherBytes(text: string, random: Random): string {
  return new TextDecoder().decode(harmed(new TextEncoder().encode(text), random));
}

const SCORE_FILE = { length: 4, sha256: "0".repeat(64), deflated: "y0hNTQUA" };

function wholeText(random: Random): string {
  if (random.next() < 0.5) return serialiseDesign(pierHallLeft);
  const show = { ...exampleShow(), score: { fileName: "duet.mid", bytesKey: "duet" } };
  return serialiseShow(show, SCORE_FILE);
}

/** What is wrong with how a text is read. */
function wrongIn(text: string): string {
  for (const reading of [parseDesign(text), parseExportedShow(text)]) {
    if (reading.ok) {
      const found = notFinite(reading);
      if (found) return found;
    } else if (reading.faults.length === 0 || reading.faults.length > MOST_FAULTS) {
      return `${reading.faults.length} faults`;
    } else {
      const strange = reading.faults.find(({ message }) => !mayBeShown(message));
      if (strange) return `refused with “${strange.message.slice(0, 300)}”`;
    }
  }
  if ("polluted" in {}) return "every object has been given a key";
  return midiScore(new TextEncoder().encode(text)).ok ? "was taken for a score" : "";
}

export const documents: TortureRow = {
  name: "designs and shows harmed",
  full: 5000,
  short: 20,
  run: async (tries, seed) => {
    const random = newRandom(seed);
    return runTrials(tries, LONGEST, (index) => {
      const harm = random.pick([withOtherValues, withOtherBytes]);
      return { tried: `text ${index}, ${harm.name}`, wrong: wrongIn(harm(wholeText(random), random)) };
    });
  },
};
