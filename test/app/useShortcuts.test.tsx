import { act, render } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { expect, it } from "vitest";
import { useShortcuts } from "../../src/app/useShortcuts";
import { session, workbench } from "../../src/workbench/session/session";

function Page() {
  useShortcuts();
  return null;
}

it("the keyboard takes a step back and forth", async () => {
  const design = () => {
    const { designs, open } = session.store.getState().history.present;
    return designs[open];
  };
  workbench.resetToExamples();
  render(<Page />);
  const user = userEvent.setup();
  act(() => workbench.setValue("secondary.turns", 1234));
  await user.keyboard("{Control>}z{/Control}");
  expect(design().secondary.turns).not.toBe(1234);
  await user.keyboard("{Control>}{Shift>}z{/Shift}{/Control}");
  expect(design().secondary.turns).toBe(1234);
  await user.keyboard("{Control>}z{/Control}{Control>}y{/Control}");
  expect(design().secondary.turns).toBe(1234);
});
