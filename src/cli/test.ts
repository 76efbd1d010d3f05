/**
 * `npm test`: the documents and samples as made anew, the build, and every test. What needs no build runs
 * beside it, and what needs one goes first once it is there: a browser waits a great deal, and the rest
 * fills the time. `-- --strict` looks at types, lint and format as well, as CI does.
 */
import { ofText } from "./proving/of-text";
import { sideBySide, type Work } from "./proving/side-by-side";

const onBuild: readonly Work[] = [{ command: "vitest run --project browser --project built" }];

const whole: readonly Work[] = [
  { command: "webpack --mode production", then: onBuild },
  { command: "tsx src/cli/docs.ts --check", isPatient: true },
  { command: "tsx src/cli/samples.ts --check", isPatient: true },
  {
    command:
      "vitest run --project spreadsheet --project engine --project endurance --project unit*",
    isPatient: true,
  },
];

await sideBySide(process.argv.includes("--strict") ? [...whole, ...ofText] : whole);
