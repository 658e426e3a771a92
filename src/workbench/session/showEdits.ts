/** The edits of a show as pure functions: adding, opening, replacing and removing designs. */
import type { Design } from "../../design/design";
import { pierHallLeft } from "../../design/examples";
import type { Show } from "../../design/show";
import type { Seat } from "../keeping/version";

/** The open design. */
export function openDesignOf(show: Show): Design {
  return show.designs[show.open];
}

/** The show with a design of it replaced. */
export function withDesign(show: Show, id: string, design: Design): Show {
  return { ...show, designs: { ...show.designs, [id]: design } };
}

/** The show with the open design changed by a recipe. */
export function withOpenDesign(show: Show, recipe: (design: Design) => Design): Show {
  const before = openDesignOf(show);
  const after = recipe(before);
  return after === before ? show : withDesign(show, show.open, after);
}

/** The show with a design added at the end of the list and opened. */
export function withAddedDesign(show: Show, id: string, design: Design): Show {
  return { ...withDesign(show, id, design), order: [...show.order, id], open: id };
}

/** The show with another design open; unchanged if the id is unknown. */
export function withOpened(show: Show, id: string): Show {
  return Object.hasOwn(show.designs, id) && id !== show.open ? { ...show, open: id } : show;
}

/** The show with a deleted design back in its former place, as far as that is free. */
export function withDesignBack(show: Show, id: string, design: Design, seat: Seat): Show {
  const added = withAddedDesign(show, id, design);
  const order = show.order.toSpliced(seat.index, 0, id);
  if (seat.side === "right" && show.right === null) return { ...added, order, right: id };
  if (seat.side !== "left" || show.left !== seat.taker) return { ...added, order };
  const right = seat.fromRight && show.right === null ? seat.taker : show.right;
  return { ...added, order, left: id, right };
}

/** A title that no design of the show has: the wanted one, with a number if necessary. */
export function freeTitle(show: Show, wanted: string): string {
  const taken = new Set(Object.values(show.designs).map((design) => design.title));
  let title = wanted;
  for (let count = 2; taken.has(title); count++) title = `${wanted} ${count}`;
  return title;
}

/** A new design, with the proportions of the worked example. */
export function startingDesign(title: string): Design {
  return { ...pierHallLeft, title, notes: "" };
}

/**
 * The show without a design. If it was open, its neighbour in the list is opened. If it was the left coil, a
 * neighbour replaces it: the right coil only if there is no other design. If it was the last design, a starting
 * design with the new id replaces it.
 */
export function withoutDesign(show: Show, id: string, newId: string): Show {
  if (!Object.hasOwn(show.designs, id)) return show;
  if (show.order.length === 1) {
    return withoutDesign(withAddedDesign(show, newId, startingDesign("New design")), id, newId);
  }
  const at = show.order.indexOf(id);
  const order = show.order.filter((each) => each !== id);
  const neighbour = order[Math.min(at, order.length - 1)];
  const { [id]: _gone, ...designs } = show.designs;
  const others = [...order.slice(at), ...order.slice(0, at).reverse()].filter((each) => each !== show.right);
  const left = show.left === id ? (others[0] ?? neighbour) : show.left;
  return {
    ...show,
    designs,
    order,
    left,
    right: show.right === id || show.right === left ? null : show.right,
    open: show.open === id ? neighbour : show.open,
  };
}
