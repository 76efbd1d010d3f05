/** npm run try -- '=TITRE.DOSE(...)': computes a formula and shows its working. */
import { report } from "./try/report";

const { text, isComplete } = report(process.argv.slice(2).join(" "));
console.log(text);
process.exitCode = isComplete ? 0 : 1;
