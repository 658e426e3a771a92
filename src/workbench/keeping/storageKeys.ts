/**
 * The names under which this app stores data in the browser. Only constants and no imports, so that the safe
 * page can use them when the program does not start.
 */

/** local storage: the present show, in its envelope */
export const SHOW_KEY = "coilwright/show";
/** local storage: the ring of earlier states written by builds before the versions */
export const BACKUP_KEYS = ["coilwright/backup/0", "coilwright/backup/1", "coilwright/backup/2"] as const;
/** local storage: unreadable text, under this prefix and a time */
export const KEPT_PREFIX = "coilwright/kept/";
export const PREFERENCES_KEY = "coilwright/preferences";

/** database: the journal and the versions */
export const KEEPING_DATABASE = "coilwright/keeping";
export const KEEPING_DATABASE_VERSION = 1;
/** records `{ revision, text }` by revision; the text is the same envelope as in local storage */
export const JOURNAL_STORE = "journal";
/** dated versions by id, each with the text of the document as in its file */
export const VERSIONS_STORE = "versions";
/** the versions' summaries by id, without their texts, so that a list is quick to read */
export const SUMMARIES_STORE = "summaries";

/** database: created at each start in order to delete it */
export const FRESH_LOG_DATABASE = "coilwright/fresh-log";

/** cache storage: copies of the newest records of the journal, of the versions and of the score files */
export const SECOND_PLACE = "coilwright/kept";
/** in the cache storage, by revision: `{ revision, text }` as in the journal */
export const RECORD_PREFIX = "record/";
/** in the cache storage, by id: a version with the additional fields of its summary */
export const VERSION_PREFIX = "version/";
/** in the cache storage, by key: the bytes of a score file */
export const SCORE_PREFIX = "score/";

/** database: the bytes of score files, by key */
export const SCORES_DATABASE = "coilwright/scores";
export const SCORES_DATABASE_VERSION = 1;
export const BYTES_STORE = "bytes";
