/** What keeps the results of a recorded row from being worked out: the cells' own sentences. */
import { isProblem } from "../../core/problem/problem";
import { type Cells, type Host, isFault } from "../../sheet/port";
import { explainFormula } from "../explain/explain";
import { asked } from "./asked";
import type { Plan } from "./plan";
import { answerOf } from "./logbook/read-logbook";
import { errorAt } from "./record/verify-record";
import { lookupFor } from "./what-it-reads";

/** The first of our functions in the formula that gives no answer says why. */
async function reasonOf(host: Host, formula: string, cell: Plan["block"]): Promise<string> {
  const lookup = await lookupFor(host, formula, cell);
  const calls = explainFormula(formula, lookup);
  const told = isProblem(calls) ? [] : calls.flatMap(({ problem }) => problem?.says ?? []);
  return told[0] ?? "its formula gives no answer from what the row holds.";
}

async function cellsOf(host: Host, { block }: Plan): Promise<Cells | undefined> {
  const found = await asked(() => host.read([{ ask: "cells", block }]));
  const cells = isFault(found) ? undefined : answerOf("cells", found[0]);
  return cells && !isFault(cells) ? cells : undefined;
}

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;

/** One sentence for each reason, with the headings it holds for. */
export async function troublesOf(host: Host, plan: Plan): Promise<string[]> {
  const cells = await cellsOf(host, plan);
  if (!cells) return [];
  const headings = new Map<string, string[]>();
  for (const cell of plan.cells) {
    if (cell.block.row !== plan.block.row) continue;
    const { error, formula } = errorAt(cells, cell);
    if (error === "") continue;
    const reason = await asked(() => reasonOf(host, formula, cell.block));
    const says = isFault(reason) ? "its formula gives no answer." : reason;
    const about = `(${error}) ${says}`;
    headings.set(about, [...(headings.get(about) ?? []), cell.heading]);
  }
  return [...headings].map(([says, names]) => `${list(names)} ${says}`);
}
