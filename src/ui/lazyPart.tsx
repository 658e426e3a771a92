import { type ComponentType, lazy, Suspense, useState } from "react";
import { Contained } from "./Contained";
import { PartNotLoaded } from "./containment";
import { Waiting } from "./Waiting";

type Loaded<Name extends string> = Record<Name, ComponentType>;

const OWN_SCRIPT = /https?:\/\/[^\s"']+\.js\b/;
const OWN_STYLE = /[^\s"']+\.css\b/;

/** A style that failed to load stands in the page and would be taken for loaded. */
function forgetStyle(message: string) {
  const name = message.match(OWN_STYLE)?.[0];
  if (!name) return;
  for (const link of document.querySelectorAll<HTMLLinkElement>("link[rel=stylesheet]"))
    if (link.href.endsWith(name.replace(/^\.?\/?/, ""))) link.remove();
}

/**
 * Fetches a part whose fetching has failed before. Browsers keep the failure of an import by its
 * address until the page is loaded anew, so the script that failed is asked for under another one.
 */
async function loadedAgain<Name extends string>(load: () => Promise<Loaded<Name>>): Promise<Loaded<Name>> {
  try {
    return await load();
  } catch (error) {
    const message = String(error);
    const address = message.match(OWN_SCRIPT)?.[0];
    if (!address || new URL(address).origin !== window.location.origin) {
      forgetStyle(message);
      return load();
    }
    return (await import(/* @vite-ignore */ `${address}?again=${Date.now()}`)) as Loaded<Name>;
  }
}

interface Part {
  what: string;
  /** what is shown now; shared by all places, so that a part once fetched is there at once */
  current: ComponentType;
  /** fetched anew, for after a failure */
  renewed: () => ComponentType;
}

/**
 * A component that is fetched when it is first shown. What it waits for, and what fails, stands in its
 * own place; another try really fetches again.
 * @param load imports the file
 * @param name of the component among the file's exports
 * @param what it is, without the article
 */
export function lazyPart<Name extends string>(
  load: () => Promise<Loaded<Name>>,
  name: Name,
  what: string,
): ComponentType {
  const lazily = (fetch: () => Promise<Loaded<Name>>) =>
    lazy(async () => {
      try {
        const component: ComponentType = (await fetch())[name];
        return { default: component };
      } catch (cause) {
        throw new PartNotLoaded(`the ${what} did not load`, { cause });
      }
    });
  const part: Part = {
    what,
    current: lazily(load),
    renewed: () => lazily(() => loadedAgain(load)),
  };
  return () => <Fetched part={part} />;
}

function Fetched({ part }: { part: Part }) {
  const [Shown, setShown] = useState(() => part.current);
  const renew = (error: unknown) => {
    if (!(error instanceof PartNotLoaded)) return;
    part.current = part.renewed();
    setShown(() => part.current);
  };
  return (
    <Contained what={part.what} onRetry={renew}>
      <Suspense fallback={<Waiting what={part.what} />}>
        <Shown />
      </Suspense>
    </Contained>
  );
}
