import { type ComponentType, useEffect, useState } from "react";
import { Contained } from "./Contained";
import { PartNotLoaded } from "./containment";
import styles from "./Waiting.module.css";

/** Shown while a part is loading. */
function Waiting({ what }: { what: string }) {
  return <p className={styles.waiting}>Loading the {what} …</p>;
}

type Loaded<Name extends string> = Record<Name, ComponentType>;

const OWN_SCRIPT = /https?:\/\/[^\s"']+\.js\b/;
const OWN_STYLE = /[^\s"']+\.css\b/;

/** The link of a style sheet that failed to load stays in the page and would count as loaded. */
function forgetStyle(message: string) {
  const name = message.match(OWN_STYLE)?.[0];
  if (!name) return;
  for (const link of document.querySelectorAll<HTMLLinkElement>("link[rel=stylesheet]"))
    if (link.href.endsWith(name.replace(/^\.?\/?/, ""))) link.remove();
}

/**
 * Loads a part again after a failure. Browsers cache a failed import by its URL until the page is
 * reloaded, so the script is requested under another URL.
 */
async function importAgain<Name extends string>(
  importFile: () => Promise<Loaded<Name>>,
): Promise<Loaded<Name>> {
  try {
    return await importFile();
  } catch (error) {
    const message = String(error);
    const address = message.match(OWN_SCRIPT)?.[0];
    if (!address || new URL(address).origin !== window.location.origin) {
      forgetStyle(message);
      return importFile();
    }
    return (await import(/* @vite-ignore */ `${address}?again=${Date.now()}`)) as Loaded<Name>;
  }
}

interface Part {
  what: string;
  /** null until loaded; shared by all places, so that a loaded part shows without delay */
  component: ComponentType | null;
  /** starts loading on the first call; later calls return the same promise */
  load: () => Promise<ComponentType>;
  /** loads again after a failure */
  reload: () => Promise<ComponentType>;
}

/**
 * A component that is loaded when it is first shown. While it loads, or if that fails, a message stands
 * in its place; a retry does request it again. React's Suspense is not used: it delays a loaded part by
 * up to 0.3 s after each part that was revealed before it.
 * @param importFile imports the file
 * @param name of the component among the file's exports
 * @param what its name on screen, without the article
 */
export function lazyPart<Name extends string>(
  importFile: () => Promise<Loaded<Name>>,
  name: Name,
  what: string,
): ComponentType {
  let loading: Promise<ComponentType> | undefined;
  const loadFrom = async (source: () => Promise<Loaded<Name>>) => {
    try {
      part.component = (await source())[name];
      return part.component;
    } catch (cause) {
      throw new PartNotLoaded(`the ${what} did not load`, { cause });
    }
  };
  const part: Part = {
    what,
    component: null,
    load: () => {
      loading ??= loadFrom(importFile);
      return loading;
    },
    reload: () => {
      loading = loadFrom(() => importAgain(importFile));
      return loading;
    },
  };
  return () => <ContainedPart part={part} />;
}

function ContainedPart({ part }: { part: Part }) {
  const reload = (error: unknown) => {
    // a failure is handled where the part is awaited
    if (error instanceof PartNotLoaded) part.reload().catch(() => undefined);
  };
  return (
    <Contained what={part.what} onRetry={reload}>
      <LoadedPart part={part} />
    </Contained>
  );
}

type LoadState = { component: ComponentType | null } | { failure: unknown };

function LoadedPart({ part }: { part: Part }) {
  const [state, setState] = useState<LoadState>({ component: part.component });
  useEffect(() => {
    let mounted = true;
    part.load().then(
      (component) => mounted && setState({ component }),
      (failure: unknown) => mounted && setState({ failure }),
    );
    return () => {
      mounted = false;
    };
  }, [part]);
  if ("failure" in state) throw state.failure;
  const { component: Component } = state;
  return Component ? <Component /> : <Waiting what={part.what} />;
}
