/** Every plain-formula twin, by the id of its function. */
import { functionNamed } from "../../functions/catalogue";
import type { Twin } from "../../functions/twin";
import { againstLimit } from "./against-limit";
import { amounts } from "./amounts";
import { batch } from "./batch";
import { fuel } from "./fuel";
import { pretreatmentAndBatch } from "./pretreatment-and-batch";
import { endPoint, steepness } from "./probe";
import { record } from "./record";
import { replicateTwins } from "./replicates";
import { Reading } from "./shared/reading";
import type { Work } from "./shared/work";
import { titrant } from "./titrant";
import { titration } from "./titration";
import { uncertainty } from "./uncertainty";
import { whatIf } from "./what-if";

export const twins: Readonly<Record<string, Work>> = {
  ...titration,
  ...titrant,
  ...amounts,
  ...replicateTwins,
  ...uncertainty,
  ...record,
  ...batch,
  ...pretreatmentAndBatch,
  WHATIF: whatIf,
  AGAINSTLIMIT: againstLimit,
  ...fuel,
  ENDPOINT: endPoint,
  STEEPNESS: steepness,
};

/** How a function is written out in plain formulas; undefined for an id that nobody knows. */
export function twinOf(id: string): Twin | undefined {
  const entry = functionNamed(id);
  const work = entry && twins[entry.id];
  return work && ((call) => work(new Reading(entry, call)));
}
