/** What is looked at without running anything of the project: types, lint, format. */
import type { Work } from "./side-by-side";

export const ofText: readonly Work[] = [
  // the compiler in machine code takes a fifth of the time; what asks a compiler for its parts needs the other
  "node node_modules/typescript-native/bin/tsc --noEmit",
  "eslint --cache --cache-location .cache/lint .",
  "prettier --check --log-level warn --cache --cache-location .cache/format .",
].map((command) => ({ command, isPatient: true }));
