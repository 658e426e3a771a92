/**
 * The names under which this app keeps things in the browser. Constants alone and no imports, so that
 * the page that helps where the program cannot start may read what is kept.
 */

/** local storage: the present show, in its envelope */
export const SHOW_KEY = "coilwright/show";
/** local storage: the ring of earlier states that builds before the versions made */
export const BACKUP_KEYS = ["coilwright/backup/0", "coilwright/backup/1", "coilwright/backup/2"] as const;
/** local storage: text that could not be read is kept under this and a time */
export const KEPT_PREFIX = "coilwright/kept/";
export const PREFERENCES_KEY = "coilwright/preferences";

/** database: the journal and the versions */
export const KEEPING_DATABASE = "coilwright/keeping";
export const KEEPING_DATABASE_VERSION = 1;
/** records `{ revision, text }` by revision; the text is the envelope that local storage holds */
export const JOURNAL_STORE = "journal";
/** dated versions by id, each with the text of the document as its file would be */
export const VERSIONS_STORE = "versions";
/** by id, what there is to know of a version without its text, so that a list reads little */
export const SUMMARIES_STORE = "summaries";

/** database: made and deleted at each start, for the sake of its deletion */
export const FRESH_LOG_DATABASE = "coilwright/fresh-log";

/** cache storage: copies of the newest records of the journal, of the versions and of the score files */
export const SECOND_PLACE = "coilwright/kept";
/** there: by revision, `{ revision, text }` as in the journal */
export const RECORD_PREFIX = "record/";
/** there: by id, a version with what its summary adds */
export const VERSION_PREFIX = "version/";
/** there: by key, the bytes of a score file */
export const SCORE_PREFIX = "score/";

/** database: the bytes of score files, by key */
export const SCORES_DATABASE = "coilwright/scores";
export const SCORES_DATABASE_VERSION = 1;
export const BYTES_STORE = "bytes";
