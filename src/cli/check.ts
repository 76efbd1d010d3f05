/**
 * `npm run check`: types, lint, format, the rules, and those unit tests that what was changed since the last
 * commit can reach, side by side. `-- --all` runs the whole unit suite; `-- --still` no test at all.
 */
import { ofText } from "./proving/of-text";
import { sideBySide, type Work } from "./proving/side-by-side";

const all: readonly Work[] = [{ command: "vitest run --project unit*" }];

const reached: readonly Work[] = [
  { command: "vitest run --project unit tests/rules" },
  { command: "vitest run --project unit* --changed --passWithNoTests" },
];

const given = new Set(process.argv);

const tests = given.has("--still") ? [] : given.has("--all") ? all : reached;

await sideBySide([...tests, ...ofText]);
