// @vitest-environment node
import { describe, expect, it } from "vitest";
import { exampleShow } from "../../../src/design/examples";
import { contentKey } from "../../../src/design/scoreFile";
import type { Show } from "../../../src/design/show";
import { keepBytes, keptBytes } from "../../../src/workbench/keeping/scoreBytes";
import { isScoreOf, scoreFileOf, withScoreKept } from "../../../src/workbench/keeping/travellingScore";

const BYTES = Uint8Array.of(77, 84, 104, 100, 1, 2, 3);

function showWith(bytesKey: string): Show {
  const lanes = [{ part: "1:1", coil: "left" as const, transpose: -12, level: 0.5 }];
  return { ...exampleShow(), lanes, score: { fileName: "duet.mid", bytesKey } };
}

describe("the score of a show that travels", () => {
  it("goes out with its bytes, and is kept where it arrives under the key of its content", async () => {
    await keepBytes("somewhere", BYTES);
    const sent = showWith("somewhere");
    const arrived = await withScoreKept(sent, await scoreFileOf(sent));
    const key = await contentKey(BYTES);
    expect(arrived).toEqual({ ok: true, show: showWith(key) });
    expect(await keptBytes(key)).toEqual(BYTES);
  });

  it("stays behind where its bytes are not kept, or there is none", async () => {
    expect(await scoreFileOf(showWith("nowhere"))).toBeNull();
    expect(await scoreFileOf(exampleShow())).toBeNull();
    expect(await withScoreKept(showWith("nowhere"), null)).toEqual({ ok: true, show: showWith("nowhere") });
  });

  it("is not taken where its bytes are damaged", async () => {
    await keepBytes("somewhere", BYTES);
    const sent = showWith("somewhere");
    const packed = await scoreFileOf(sent);
    const harmed = packed && { ...packed, sha256: "0".repeat(64) };
    expect(await withScoreKept(sent, harmed)).toMatchObject({ ok: false });
    expect(await keptBytes("0".repeat(64))).toBeNull();
  });
});

describe("a score that is opened again", () => {
  const opened = async (parts: string[], fileName = "other.mid") => ({
    fileName,
    bytesKey: await contentKey(BYTES),
    parts,
  });

  it("is the same by its content, whatever it is called and under whichever key it is kept", async () => {
    await keepBytes("older", BYTES);
    await keepBytes("strange", Uint8Array.of(1));
    expect(await isScoreOf(showWith(await contentKey(BYTES)), await opened([]))).toBe(true);
    expect(await isScoreOf(showWith("older"), await opened([]))).toBe(true);
    expect(await isScoreOf(showWith("strange"), await opened(["1:1"], "duet.mid"))).toBe(false);
    expect(await isScoreOf(exampleShow(), await opened([]))).toBe(false);
  });

  it("is the same by name and parts where the show's own bytes are gone", async () => {
    expect(await isScoreOf(showWith("nowhere"), await opened(["1:1"], "duet.mid"))).toBe(true);
    expect(await isScoreOf(showWith("nowhere"), await opened(["1:1"]))).toBe(false);
    expect(await isScoreOf(showWith("nowhere"), await opened(["2:1"], "duet.mid"))).toBe(false);
  });
});
