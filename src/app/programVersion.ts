/** The version in package.json, put in by the build. */
export const PROGRAM_VERSION: string = import.meta.env.PROGRAM_VERSION ?? "without a version";
