/**
 * `npm test`: the documents and samples as made anew, the build, and every test. What needs no build runs
 * beside it, and what needs one goes first once it is there: a browser waits a great deal, and the rest
 * fills the time. `-- --strict` looks at types, lint and format as well, as CI does; `-- --wide` goes the
 * rare roads too (tests/wide.ts).
 */
import { ofText } from "./proving/of-text";
import { inTurn, sideBySide, type Work } from "./proving/side-by-side";

const onBuild: readonly Work[] = [{ command: "vitest run --project browser --project built" }];

if (process.argv.includes("--wide")) process.env.WIDE = "1";

const onText = process.argv.includes("--strict") ? ofText : [];

await sideBySide([
  { command: "webpack --mode production", then: onBuild },
  ...inTurn([
    { command: "tsx src/cli/docs.ts --check" },
    { command: "tsx src/cli/samples.ts --check" },
    ...onText,
  ]),
  {
    command: "vitest run --project programs --project unit*",
  },
]);
