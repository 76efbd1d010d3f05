/** A plan with what follows from the rest of it: what must be confirmed, and its fingerprint. */
import type { Plan } from "./plan";

type Parts = Omit<Plan, "kind" | "mustConfirm" | "fingerprint">;

export const finished = (parts: Parts): Plan => ({
  kind: "plan",
  ...parts,
  mustConfirm: parts.remarks.flatMap(({ confirm }) => confirm ?? []),
  fingerprint: JSON.stringify([parts.steps, parts.cells.map(({ now }) => now), parts.remarks]),
});
