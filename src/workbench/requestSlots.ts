/** One request in flight and one waiting; the newest that waits replaces the one before it. */
export interface RequestSlots<Request> {
  /** Sends at once when nothing is in flight, otherwise waits. */
  offer(request: Request): void;
  /** Says that the request in flight is done; the waiting one goes next. */
  done(): void;
}

/** Makes the two slots, both empty. */
export function newRequestSlots<Request>(send: (request: Request) => void): RequestSlots<Request> {
  let inFlight: Request | null = null;
  let waiting: Request | null = null;
  const next = (request: Request | null) => {
    inFlight = request;
    waiting = null;
    if (request !== null) send(request);
  };
  return {
    offer(request) {
      if (inFlight === null) next(request);
      else waiting = request;
    },
    done: () => next(waiting),
  };
}
