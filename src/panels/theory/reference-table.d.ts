/** Made by the build from the reference tests' own lists, so that page and tests cannot part. */
declare module "virtual:reference-table" {
  export const REFERENCE_TABLE: readonly import("./referenceRow").ReferenceRow[];
}
