/** What is looked at without running anything of the project: types, lint, format. */
import type { Work } from "./side-by-side";

export const ofText: readonly Work[] = [
  "tsc --noEmit --incremental --tsBuildInfoFile .cache/types",
  "eslint --cache --cache-location .cache/lint .",
  "prettier --check --log-level warn --cache --cache-location .cache/format .",
].map((command) => ({ command, isPatient: true }));
