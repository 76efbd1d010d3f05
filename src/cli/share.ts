/**
 * npm run share -- IN.xlsx OUT.xlsx [--numbers] [--force]: a copy for somebody without the add-in. Ends
 * with 0 when the copy is written, 1 when it is not, 2 when the command was not understood.
 */
import { makeCopy } from "./share/copy";
import { diskFiles } from "./share/files";
import { readRequest } from "./share/request";

const request = readRequest(process.argv.slice(2));
if (typeof request === "string") {
  console.error(request);
  process.exitCode = 2;
} else {
  const { isDone, lines } = makeCopy(request, diskFiles, String(process.pid));
  if (isDone) console.log(lines.join("\n"));
  else console.error(lines.join("\n"));
  process.exitCode = isDone ? 0 : 1;
}
