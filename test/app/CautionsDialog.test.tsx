import { fireEvent, render, screen } from "@testing-library/react";
import { beforeAll, describe, expect, it, vi } from "vitest";
import { CautionsDialog } from "../../src/app/CautionsDialog";
import { cautions, practiceSentence } from "../../src/design/cautions";
import { addBrowserParts } from "./browserParts";

beforeAll(addBrowserParts);

describe("the cautions of first start", () => {
  it("name what can kill, burn and harm, and defer to codes and licensed practice", () => {
    const text = cautions.map((caution) => `${caution.title} ${caution.sentence}`).join(" ");
    for (const danger of [
      /lethal/i,
      /stored energy/i,
      /burn/i,
      /fire/i,
      /ozone/i,
      /noise/i,
      /pacemaker/i,
      /electronics/i,
    ]) {
      expect(text).toMatch(danger);
    }
    expect(practiceSentence).toMatch(/local.*codes.*licensed practice decide/i);
  });

  it("shows every one of them until they are acknowledged", () => {
    const onAcknowledge = vi.fn();
    render(<CautionsDialog open mustAcknowledge onAcknowledge={onAcknowledge} />);
    for (const caution of cautions)
      expect(screen.getByText(caution.sentence, { exact: false })).toBeInTheDocument();
    expect(screen.queryByRole("button", { name: "Close" })).toBeNull();
    fireEvent.click(screen.getByRole("button", { name: /read and understood/ }));
    expect(onAcknowledge).toHaveBeenCalledOnce();
  });

  it("does not let Escape pass at first start", () => {
    render(<CautionsDialog open mustAcknowledge onAcknowledge={vi.fn()} />);
    expect(fireEvent(screen.getByRole("dialog"), new Event("cancel", { cancelable: true }))).toBe(false);
  });

  it("can be read again later and closed", () => {
    const onAcknowledge = vi.fn();
    render(<CautionsDialog open mustAcknowledge={false} onAcknowledge={onAcknowledge} />);
    expect(screen.getAllByRole("button", { name: "Close" })).toHaveLength(2);
  });
});
