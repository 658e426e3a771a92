import { createHash, randomBytes } from "node:crypto";
import { deflateRawSync, inflateRawSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { exampleShow } from "../../src/design/examples";
import { MOST_SCORE_BYTES } from "../../src/design/fileLimits";
import { contentKey, packScore, type ScoreFile, unpackScore } from "../../src/design/scoreFile";
import { parseExportedShow, parseShow, serialiseShow } from "../../src/design/show";
import { specificationExample } from "../calc/music/midiFiles";

const score = () => Uint8Array.from(specificationExample(1));
const hashed = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

/** What a stranger may write: any bytes under any declared length, packed by zlib. */
function packedByZlib(bytes: Uint8Array, length: number): ScoreFile {
  return { length, sha256: hashed(bytes), deflated: deflateRawSync(bytes).toString("base64") };
}

describe("the score within a show's file", () => {
  it("comes out as it went in, and reads as zlib and OpenSSL do", async () => {
    const bytes = score();
    const packed = await packScore(bytes);
    expect(await unpackScore(packed)).toEqual({ ok: true, bytes });
    expect(inflateRawSync(Buffer.from(packed.deflated, "base64"))).toEqual(Buffer.from(bytes));
    expect(packed.sha256).toBe(hashed(bytes));
    expect(await contentKey(bytes)).toBe(packed.sha256);
    expect(await unpackScore(packedByZlib(bytes, bytes.length))).toEqual({ ok: true, bytes });
  });

  it("comes out also where it has megabytes that cannot be compressed", async () => {
    const bytes = Uint8Array.from(randomBytes(2_000_000));
    const unpacked = await unpackScore(await packScore(bytes));
    expect(unpacked.ok && hashed(unpacked.bytes)).toBe(hashed(bytes));
  });

  it("is refused while it unpacks to more than it says", async () => {
    const bomb = new Uint8Array(4 * MOST_SCORE_BYTES);
    expect(await unpackScore(packedByZlib(bomb, 1000))).toEqual({
      ok: false,
      message:
        "The score in this show unpacks to more than the 1000 bytes it states: export the show again where its score still plays.",
    });
    expect(await unpackScore(packedByZlib(bomb, bomb.length))).toMatchObject({
      ok: false,
      message: expect.stringContaining("the limit is 16 MiB"),
    });
  });

  it.each<[string, (file: ScoreFile) => Partial<ScoreFile>]>([
    ["cut short", ({ deflated }) => ({ deflated: deflated.slice(0, deflated.length >> 1) })],
    ["no base64", () => ({ deflated: "§" })],
    ["no compressed data", () => ({ deflated: btoa("not deflated at all") })],
    ["of another length", ({ length }) => ({ length: length + 1 })],
    ["of another content", () => ({ sha256: "0".repeat(64) })],
  ])("is refused where it is %s", async (_what, change) => {
    const packed = await packScore(score());
    expect(await unpackScore({ ...packed, ...change(packed) })).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^The score in this show is damaged/),
    });
  });
});

describe("a show that travels", () => {
  const withScore = () => ({ ...exampleShow(), score: { fileName: "duet.mid", bytesKey: "any" } });

  it("comes back with the bytes of its score", async () => {
    const show = withScore();
    const scoreFile = await packScore(score());
    expect(parseExportedShow(serialiseShow(show, scoreFile))).toEqual({ ok: true, show, scoreFile });
    expect(parseExportedShow(serialiseShow(show))).toEqual({ ok: true, show, scoreFile: null });
  });

  it("is kept in the browser without them", async () => {
    const text = serialiseShow(withScore(), await packScore(score()));
    expect(parseShow(text)).toMatchObject({ ok: false, faults: [{ path: "scoreFile" }] });
  });

  it("is refused with the path of what is wrong about them", async () => {
    const scoreFile = await packScore(score());
    const faults = (show: object) => {
      const parsed = parseExportedShow(show);
      return parsed.ok ? [] : parsed.faults.map(({ message }) => message);
    };
    expect(faults({ ...exampleShow(), scoreFile })).toEqual([
      "score is null: it must name the score whose bytes are in scoreFile.",
    ]);
    expect(faults({ ...withScore(), scoreFile: { ...scoreFile, length: 2 ** 30, sha256: "f" } })).toEqual([
      "scoreFile.length is 1073741824: it must be at most 16777216.",
      'scoreFile.sha256 is "f": it must be 64 hexadecimal digits.',
    ]);
  });
});
