/** New columns that came out with nothing in them: written as planned, and yet nobody is served. */
import { type Cells, type CellContent, type Host, isFault } from "../../../sheet/port";
import { counted } from "../../../sheet/counted";
import type { RecordOutcome } from "../plan";
import { read } from "../read";

const isResult = (value: CellContent | undefined): boolean =>
  value !== undefined && value !== "" && typeof value !== "object";

function sentenceFor({ values }: Cells, column: number, heading: string): string | undefined {
  const shown = values.slice(1).map((row) => row[column]);
  if (shown.some(isResult)) return undefined;
  const errors = shown.filter((each) => typeof each === "object");
  const [first] = errors;
  const why =
    typeof first === "object" ? `${counted(errors.length, "row")} with ${first.error}` : "";
  const empty = shown.length - errors.length;
  const said = [why, empty === 0 ? "" : `${counted(empty, "row")} empty`].filter(
    (each) => each !== "",
  );
  return `${heading} shows no figure in any row: ${said.join(", ")}. Undo it, and look in Check columns at what its readings are.`;
}

/** What was written, with a sentence for each of its columns that shows nothing. */
export async function withoutResults(host: Host, outcome: RecordOutcome): Promise<RecordOutcome> {
  if (outcome.kind !== "recorded") return outcome;
  const { block } = outcome.plan;
  const found = await read(host, [{ ask: "cells", block }]);
  if (isFault(found)) return outcome;
  const [cells] = found;
  const headings = cells.values[0] ?? [];
  const troubles = headings.flatMap((heading, column) => {
    const sentence = sentenceFor(cells, column, String(heading));
    return sentence === undefined ? [] : [sentence];
  });
  return { ...outcome, troubles: [...outcome.troubles, ...troubles] };
}
