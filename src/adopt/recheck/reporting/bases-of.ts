/** Which base's figure was taken, and which base is weighed out. */
import type { Readings } from "../reading/readings";
import type { Slip } from "../judging/slips";
import type { Finding } from "./finding";

export function basesOf(slip: Slip | undefined, { base }: Readings): Pick<Finding, "bases"> {
  const counted = slip?.ways.otherBase?.name;
  return counted === undefined || !base ? {} : { bases: { counted, weighed: base.name } };
}
