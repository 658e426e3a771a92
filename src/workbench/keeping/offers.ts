/** At the start, offers stored work that was not opened; it is never opened without the user. */
import type { Notice } from "../session/notice";
import type { KeepingDatabase } from "./keepingDatabase";
import type { VersionSummary } from "./version";
import type { VersionOutcome } from "./versions";

/** Further ones are listed among the versions. */
const MOST_OFFERS = 2;

type Take = (id: string) => Promise<VersionOutcome>;

function offer({ id, title, at, cause }: VersionSummary, database: KeepingDatabase, take: Take): Notice {
  const date = new Date(at).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });
  // if this is not stored, the version is offered again
  const end = () => database.endOffer(id).catch(() => undefined);
  return {
    id: `offer ${id}`,
    severity: "note",
    sentence: `“${title}” of ${date} is saved as a version: ${cause}.`,
    details: [],
    waysOut: ["take the version", "dismiss"],
    acts: {
      "take the version": () => void take(id).then((outcome) => (outcome.ok ? end() : undefined)),
      dismiss: () => void end(),
    },
  };
}

/** The notices of versions to offer, newest first; none if the database does not respond. */
export async function offersOf(database: KeepingDatabase, take: Take): Promise<Notice[]> {
  const summaries = await database.listVersions().catch(() => []);
  return summaries
    .filter(({ offered }) => offered)
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at))
    .slice(0, MOST_OFFERS)
    .map((summary) => offer(summary, database, take));
}
