/**
 * npm run share -- IN.xlsx OUT.xlsx [--numbers] [--force]: a copy for somebody without the add-in. Ends
 * with 0 when the copy is written, 1 when it is not, 2 when the command was not understood.
 */
import { share } from "./share/command";

const { code, said } = share(process.argv.slice(2));
if (code === 0) console.log(said);
else console.error(said);
process.exitCode = code;
