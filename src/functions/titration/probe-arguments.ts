/** The arguments ENDPOINT and STEEPNESS share: what a pH or mV probe shows as titrant is given. */
import { isProblem, type Outcome } from "../../core/problem/problem";
import type { Quantity } from "../../core/quantity/quantity";
import { limits } from "../../core/reference/limits";
import type { ProbePoint } from "../../core/titration/probe";
import { type List, list } from "../arguments";
import { canPair } from "../pairing";

export const probeArguments = {
  volumes: list(limits.reading, "volume", "Titrant given so far, mL, rising."),
  readings: list(
    limits.probeReading,
    "reading",
    "What the probe showed at each, pH or mV, in the same order.",
  ),
};

interface Given {
  readonly volumes: List<"mL">;
  readonly readings: List<"fraction">;
}

/** Point by point; a pair of which either is not filled in is left out. */
export function pointsOf({ volumes, readings }: Given): Outcome<ProbePoint[]> {
  const fit = canPair(volumes, readings, ["volumes", "readings"]);
  if (isProblem(fit)) return fit;
  return volumes.slots.flatMap((volume, place): ProbePoint[] => {
    const reading: Quantity<"fraction"> | null = readings.slots[place] ?? null;
    return volume === null || reading === null ? [] : [[volume, reading]];
  });
}
