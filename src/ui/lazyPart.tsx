import { type ComponentType, useEffect, useState } from "react";
import { Contained } from "./Contained";
import { PartNotLoaded } from "./containment";
import styles from "./Waiting.module.css";

/** Stands where a part is still being fetched. */
function Waiting({ what }: { what: string }) {
  return <p className={styles.waiting}>Fetching the {what} …</p>;
}

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
  /** once it has come; shared by all places, so that a part once fetched is there at once */
  component: ComponentType | null;
  /** fetches it the first time; later the same fetching */
  fetched: () => Promise<ComponentType>;
  /** fetched anew, for after a failure */
  renewed: () => Promise<ComponentType>;
}

/**
 * A component that is fetched when it is first shown. What it waits for, and what fails, stands in its
 * own place; another try really fetches again. Not by React's Suspense: it holds back what has come for
 * up to 0.3 s behind each other part that came before.
 * @param load imports the file
 * @param name of the component among the file's exports
 * @param what it is, without the article
 */
export function lazyPart<Name extends string>(
  load: () => Promise<Loaded<Name>>,
  name: Name,
  what: string,
): ComponentType {
  let fetching: Promise<ComponentType> | undefined;
  const fetch = async (by: () => Promise<Loaded<Name>>) => {
    try {
      part.component = (await by())[name];
      return part.component;
    } catch (cause) {
      throw new PartNotLoaded(`the ${what} did not load`, { cause });
    }
  };
  const part: Part = {
    what,
    component: null,
    fetched: () => {
      fetching ??= fetch(load);
      return fetching;
    },
    renewed: () => {
      fetching = fetch(() => loadedAgain(load));
      return fetching;
    },
  };
  return () => <Fetched part={part} />;
}

function Fetched({ part }: { part: Part }) {
  const renew = (error: unknown) => {
    // whoever waits for it hears of a failure
    if (error instanceof PartNotLoaded) part.renewed().catch(() => undefined);
  };
  return (
    <Contained what={part.what} onRetry={renew}>
      <Awaited part={part} />
    </Contained>
  );
}

type Arrival = { component: ComponentType | null } | { failure: unknown };

function Awaited({ part }: { part: Part }) {
  const [arrival, setArrival] = useState<Arrival>({ component: part.component });
  useEffect(() => {
    let wanted = true;
    part.fetched().then(
      (component) => wanted && setArrival({ component }),
      (failure: unknown) => wanted && setArrival({ failure }),
    );
    return () => {
      wanted = false;
    };
  }, [part]);
  if ("failure" in arrival) throw arrival.failure;
  const { component: Component } = arrival;
  return Component ? <Component /> : <Waiting what={part.what} />;
}
