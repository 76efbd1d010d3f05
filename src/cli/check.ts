/**
 * `npm run check`: types, lint, format and the unit suite, side by side. `-- --still` leaves out the
 * suite, and looks only at the text of the project.
 */
import { ofText } from "./proving/of-text";
import { sideBySide } from "./proving/side-by-side";

const suite = { command: "vitest run --project unit*" };

await sideBySide(process.argv.includes("--still") ? ofText : [suite, ...ofText]);
