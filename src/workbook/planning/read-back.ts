/** After writing, or after a write that was not answered: look at what is there. */
import {
  type Block,
  type Cells,
  type Fault,
  type Host,
  isFault,
  type Shortfall,
} from "../../sheet/port";
import { address } from "../../sheet/address";
import { missingSentence } from "./fault-wording";
import type { Difference, Plan, RecordOutcome } from "./plan";
import { read } from "./read";
import { type Pause, settled } from "./settle";
import { resultsIn, verifyRecord } from "./record/verify-record";

async function blockOf(host: Host, plan: Plan): Promise<Cells | Fault> {
  const found = await read(host, [{ ask: "cells", block: plan.covers ?? plan.block }]);
  return isFault(found) ? found : found[0];
}

/** What a plan writes on other sheets than its own, a block each. */
function elsewhere({ cells, block: own }: Plan): Block[] {
  const sheets = new Set(cells.map(({ block }) => block.sheet));
  sheets.delete(own.sheet);
  return [...sheets].map((sheet) => {
    const blocks = cells.flatMap(({ block }) => (block.sheet === sheet ? [block] : []));
    const row = Math.min(...blocks.map((each) => each.row));
    const column = Math.min(...blocks.map((each) => each.column));
    const rows = Math.max(...blocks.map((each) => each.row + each.rows)) - row;
    const columns = Math.max(...blocks.map((each) => each.column + each.columns)) - column;
    return { sheet, row, column, rows, columns };
  });
}

async function differencesElsewhere(host: Host, plan: Plan): Promise<Difference[] | Fault> {
  const blocks = elsewhere(plan);
  if (blocks.length === 0) return [];
  const found = await read(
    host,
    blocks.map((block) => ({ ask: "cells", block }) as const),
  );
  return isFault(found) ? found : found.flatMap((cells) => verifyRecord(plan, cells));
}

const notKnown = (plan: Plan): RecordOutcome => ({
  kind: "not-known",
  plan,
  sentence: `The spreadsheet did not answer in time. Look at ${plan.where}: if it is not there in a minute, ${plan.what} again.`,
});

/** How the write went, where it was neither refused nor all well. */
interface Wrote {
  /** It was not answered in time. */
  readonly unanswered?: Fault;
  readonly shortfall?: Shortfall;
}

export async function readBack(
  host: Host,
  plan: Plan,
  { unanswered, shortfall }: Wrote,
  pause?: Pause,
): Promise<RecordOutcome> {
  const { cells, isWrittenAgain } = await settled(host, plan, () => blockOf(host, plan), pause);
  const aside = missingSentence(shortfall?.missing ?? []);
  const undo = {
    isOneUndo: shortfall === undefined && !isWrittenAgain,
    asides: aside === undefined ? [] : [aside],
  };
  const others = isFault(cells) ? cells : await differencesElsewhere(host, plan);
  if (isFault(cells) || isFault(others)) {
    if (unanswered) return notKnown(plan);
    const there = isFault(cells) ? address(plan.block) : plan.where;
    const sentence = `Written in ${there}, but it could not be read back: look at it there.`;
    const nothing = { differences: [], troubles: [], results: {} };
    return { kind: "recorded", plan, isReadBack: false, ...undo, ...nothing, sentence };
  }
  const differences = [...verifyRecord(plan, cells), ...others];
  if (unanswered && differences.length > 0) return notKnown(plan);
  const count = differences.length;
  const sentence =
    count === 0
      ? `Written in ${plan.where}.`
      : `Written in ${plan.where}, but ${count === 1 ? "one cell is" : `${String(count)} cells are`} not as written: ${differences[0]?.sentence ?? ""}`;
  const results = resultsIn(plan, cells);
  return {
    kind: "recorded",
    plan,
    isReadBack: true,
    ...undo,
    differences,
    troubles: [],
    results,
    sentence,
  };
}
