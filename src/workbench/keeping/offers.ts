/** At the start: work that was kept and never came on the board is offered, never taken. */
import type { Notice } from "../session/notice";
import type { KeepingDatabase } from "./keepingDatabase";
import type { VersionSummary } from "./version";
import type { VersionOutcome } from "./versions";

/** More are found among the versions. */
const MOST_OFFERS = 2;

type Take = (id: string) => Promise<VersionOutcome>;

function offer({ id, title, at, cause }: VersionSummary, database: KeepingDatabase, take: Take): Notice {
  const date = new Date(at).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });
  // where the end of an offer is not kept, it comes again
  const end = () => database.endOffer(id).catch(() => undefined);
  return {
    id: `offer ${id}`,
    severity: "note",
    sentence: `“${title}” of ${date} is among the versions: ${cause}.`,
    details: [],
    waysOut: ["take the version", "dismiss"],
    acts: {
      "take the version": () => void take(id).then((outcome) => (outcome.ok ? end() : undefined)),
      dismiss: () => void end(),
    },
  };
}

/** The notices of what is still to be offered, newest first; none where the database does not answer. */
export async function offersOf(database: KeepingDatabase, take: Take): Promise<Notice[]> {
  const summaries = await database.listVersions().catch(() => []);
  return summaries
    .filter(({ offered }) => offered)
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at))
    .slice(0, MOST_OFFERS)
    .map((summary) => offer(summary, database, take));
}
