/** A set of listeners to one kind of event. */
export interface Listeners<Event> {
  listen(listener: (event: Event) => void): () => void;
  tell(event: Event): void;
}

/** Makes an empty set of listeners. */
export function newListeners<Event>(): Listeners<Event> {
  const listeners = new Set<(event: Event) => void>();
  return {
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    tell(event) {
      for (const listener of listeners) listener(event);
    },
  };
}
