/** Which tables of a workbook are Titrebook's own: by name and by headings, since others call theirs so too. */
import { batches } from "./batches";
import { blends } from "./blends";
import { benchTable } from "./bench";
import { type TableShape, typed } from "./column";
import { fuel } from "./fuel";
import { lotsTable } from "./lots";
import { lyeLotsTable } from "./lye-lots";
import { titrants } from "./titrants";
import { titrations } from "./titrations";

const lots = lotsTable({ guidance: "", source: typed("Source", 1, "") });
const shapes: readonly TableShape[] = [
  titrations,
  batches,
  blends,
  lots,
  titrants,
  fuel,
  lyeLotsTable,
];

/** Columns may have been added to one of ours, or taken away. */
const leastShare = 0.6;

export function isOurTable({
  name,
  headings,
}: {
  readonly name: string;
  readonly headings: readonly string[];
}): boolean {
  const isCalled = (own: string): boolean => own.toLowerCase() === name.toLowerCase();
  if (isCalled(benchTable)) return true;
  const shape = shapes.find((each) => isCalled(each.name));
  if (!shape) return false;
  const own = new Set(shape.columns.map(({ heading }) => heading));
  return headings.filter((each) => own.has(each)).length >= own.size * leastShare;
}
