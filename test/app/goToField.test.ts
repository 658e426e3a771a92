// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from "vitest";
import { fieldElement, goToField } from "../../src/app/goToField";

describe("going from a finding to its field", () => {
  beforeEach(() => {
    document.body.innerHTML = `
      <details><input data-field="secondary.turns"></details>
      <details><input data-field="topLoad.elements.0.tubeDiameter"><input data-field="topLoad.elements.1.tubeDiameter"></details>`;
    Element.prototype.scrollIntoView = () => {};
  });

  it("finds the field of the very path", () => {
    expect(fieldElement("topLoad.elements.1.tubeDiameter")?.dataset.field).toBe(
      "topLoad.elements.1.tubeDiameter",
    );
  });

  it("finds the first field within a part, and the nearest one for a path without a field", () => {
    expect(fieldElement("topLoad.elements.1")?.dataset.field).toBe("topLoad.elements.1.tubeDiameter");
    expect(fieldElement("secondary.resonance")?.dataset.field).toBe("secondary.turns");
    expect(fieldElement("nothing.here")).toBeNull();
  });

  it("opens the section and focuses the field", () => {
    goToField("secondary.turns");
    expect(document.querySelector("details")?.open).toBe(true);
    expect(document.activeElement).toBe(fieldElement("secondary.turns"));
  });
});
