/**
 * How the built program is cut into files: what the bench needs for its first picture comes in one, so that
 * opening it does not wait for some twenty small ones; what the entry itself needs stays out of it, because
 * the safe page must come without the program.
 */

const PROGRAM = "program";

/** Ids of a module and of all that it imports statically. */
function closureOf(entry, moduleInfo) {
  const found = new Set();
  const waiting = [entry];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (found.has(id)) continue;
    found.add(id);
    waiting.push(...(moduleInfo(id)?.importedIds ?? []));
  }
  return found;
}

/**
 * Groups for the bundler.
 * @param entry absolute path of the page's entry
 * @param firstPicture absolute paths of the modules that draw the first picture
 */
export function chunkGroups(entry, firstPicture) {
  let entryNeeds;
  let pictureNeeds;
  return [
    {
      debugName: PROGRAM,
      name(id, context) {
        const moduleInfo = (each) => context.getModuleInfo(each);
        entryNeeds ??= closureOf(entry, moduleInfo);
        pictureNeeds ??= new Set(firstPicture.flatMap((each) => [...closureOf(each, moduleInfo)]));
        return pictureNeeds.has(id) && !entryNeeds.has(id) ? PROGRAM : null;
      },
    },
  ];
}

/** The program is fetched beside the entry that asks for it, not after it. */
export function programPreloaded() {
  return {
    name: "program-preloaded",
    transformIndexHtml: {
      order: "post",
      handler: (_html, { bundle = {} }) =>
        Object.values(bundle)
          .filter(({ type, name }) => type === "chunk" && name === PROGRAM)
          .map(({ fileName }) => ({
            tag: "link",
            attrs: { rel: "modulepreload", crossorigin: true, href: `./${fileName}` },
            injectTo: "head",
          })),
    },
  };
}
