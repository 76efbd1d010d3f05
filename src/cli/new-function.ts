/** npm run new-function NAME -- --family batch --file drying-time: starts a worksheet function. */
import { fileURLToPath } from "node:url";
import { createFunction } from "./new-function/create";

const root = fileURLToPath(new URL("../..", import.meta.url));
const { text, isDone } = createFunction(process.argv.slice(2), root);
console.log(text);
process.exitCode = isDone ? 0 : 1;
