/** Every plain-formula twin, by the id of its function. */
import { functionNamed } from "../catalogue";
import type { Twin } from "../twin";
import { amounts } from "./amounts";
import { batch } from "./batch";
import { Reading } from "./shared/reading";
import type { Work } from "./shared/work";
import { titration } from "./titration";

export const twins: Readonly<Record<string, Work>> = { ...titration, ...amounts, ...batch };

/** How a function is written out in plain formulas; undefined for an id that nobody knows. */
export function twinOf(id: string): Twin | undefined {
  const entry = functionNamed(id);
  const work = entry && twins[entry.id];
  return work && ((call) => work(new Reading(entry, call)));
}
