/** The keys under which this app keeps things in the browser. */
export const SHOW_KEY = "coilwright/show";
export const BACKUP_KEYS = ["coilwright/backup/0", "coilwright/backup/1", "coilwright/backup/2"] as const;
/** Text that could not be read is kept under this and a time. */
export const KEPT_PREFIX = "coilwright/kept/";
export const PREFERENCES_KEY = "coilwright/preferences";
