import { act, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { DesignMenu } from "../../src/app/DesignMenu";
import { DesignTitle } from "../../src/app/Header";
import { session, workbench } from "../../src/workbench/session/session";

const show = () => session.store.getState().history.present;
const design = () => show().designs[show().open];

beforeEach(() => {
  workbench.resetToExamples();
});

describe("the head of the page", () => {
  it("renames the open design in its title cell, and ignores an empty title", async () => {
    const user = userEvent.setup();
    render(<DesignTitle />);
    const title = document.getElementById("design-title") as HTMLInputElement;
    await user.clear(title);
    await user.type(title, "Hall coil{Enter}");
    expect(design().title).toBe("Hall coil");
    await user.clear(title);
    act(() => title.blur());
    expect(design().title).toBe("Hall coil");
    expect(title.value).toBe("Hall coil");
  });

  it("lists the designs in a menu that arrows walk and Escape closes", async () => {
    const user = userEvent.setup();
    render(<DesignMenu onImport={() => undefined} onExample={() => undefined} />);
    await user.click(screen.getByRole("button", { name: "Designs and files" }));
    expect(screen.getAllByRole("menuitemradio")).toHaveLength(show().order.length);
    await user.keyboard("{ArrowDown}{Enter}");
    expect(show().open).toBe(show().order[1]);
    await user.click(screen.getByRole("button", { name: "Designs and files" }));
    await user.keyboard("{Escape}");
    expect(screen.queryByRole("menu")).toBeNull();
    expect(document.activeElement).toBe(screen.getByRole("button", { name: "Designs and files" }));
  });
});
