/** Ways in which a file may come to harm, or be harmed by hand. */
import type { Random } from "./random";

function placeIn(bytes: Uint8Array, random: Random): number {
  return random.whole(0, bytes.length - 1);
}

function joined(...pieces: Uint8Array[]): Uint8Array {
  return Uint8Array.from(pieces.flatMap((piece) => [...piece]));
}

function flipped(bytes: Uint8Array, random: Random): Uint8Array {
  const changed = Uint8Array.from(bytes);
  for (let flips = random.whole(1, 12); flips > 0; flips--)
    changed[placeIn(changed, random)] = random.whole(0, 255);
  return changed;
}

function cut(bytes: Uint8Array, random: Random): Uint8Array {
  return bytes.slice(0, random.whole(1, bytes.length));
}

/** A piece of the file stands a second time somewhere else in it. */
function spliced(bytes: Uint8Array, random: Random): Uint8Array {
  const from = placeIn(bytes, random);
  const piece = bytes.slice(from, from + random.whole(1, 64));
  const at = placeIn(bytes, random);
  return joined(bytes.slice(0, at), piece, bytes.slice(at));
}

function without(bytes: Uint8Array, random: Random): Uint8Array {
  const at = placeIn(bytes, random);
  return joined(bytes.slice(0, at), bytes.slice(at + random.whole(1, 16)));
}

const EXTREMES = [0x00, 0x01, 0x7f, 0x80, 0xff];

/** A length, a count or a time becomes as small or as large as its bytes allow. */
function extreme(bytes: Uint8Array, random: Random): Uint8Array {
  const changed = Uint8Array.from(bytes);
  const at = placeIn(changed, random);
  changed.fill(random.pick(EXTREMES), at, at + random.whole(1, 4));
  return changed;
}

const WAYS = [flipped, cut, spliced, without, extreme];

/** The bytes of a file, harmed in one to three ways. */
export function harmed(bytes: Uint8Array, random: Random): Uint8Array {
  let changed = bytes;
  for (let times = random.whole(1, 3); times > 0 && changed.length > 0; times--)
    changed = random.pick(WAYS)(changed, random);
  return changed;
}
