/**
 * Every sample workbook, in the order the README names them. One that is added here is made, checked
 * byte for byte, opened and printed by the tests.
 */
import { checksWorkbook } from "./checks-book";
import { logbook } from "./logbook";
import { oldLogbook } from "./old-logbook";
import { ownLogbook } from "./own-logbook";
import { partnerLogbook } from "./partner-logbook";
import type { Sample } from "./sample";
import { whatIf } from "./what-if";

const samples: readonly Sample[] = [
  logbook,
  ownLogbook,
  whatIf,
  checksWorkbook,
  partnerLogbook,
  oldLogbook,
];

/** Makes each sample once, also where another is made from it. */
export async function makeSamples(): Promise<ReadonlyMap<string, Uint8Array>> {
  const done = new Map<string, Uint8Array>();
  const made = async (file: string): Promise<Uint8Array> => {
    const known = done.get(file);
    if (known) return known;
    const sample = samples.find((each) => each.file === file);
    if (!sample) throw new RangeError(`there is no sample ${file}`);
    const bytes = await sample.make(made);
    done.set(file, bytes);
    return bytes;
  };
  for (const { file } of samples) await made(file);
  return done;
}
