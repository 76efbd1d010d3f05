/** What keeps the results of a recorded row from being worked out: the cells' own sentences. */
import { isProblem } from "../../core/problem/problem";
import { type Cells, type Host, isFault } from "../../sheet/port";
import { explainFormula } from "../explain/explain";
import { asked } from "./asked";
import { isHeading } from "./headings";
import type { Plan } from "./plan";
import { read } from "./read";
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
  const found = await read(host, [{ ask: "cells", block }]);
  return isFault(found) ? undefined : found[0];
}

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;

/**
 * One sentence for each reason, with the headings it holds for.
 * @param mayLack headings under which #N/A says no more than that an optional figure was not given
 */
export async function troublesOf(
  host: Host,
  plan: Plan,
  mayLack: readonly string[],
): Promise<string[]> {
  const cells = await cellsOf(host, plan);
  if (!cells) return [];
  const isOptional = (heading: string) => mayLack.some((each) => isHeading(each, heading));
  const wrong = plan.cells
    .filter(({ block }) => block.row === plan.block.row)
    .map((cell) => ({ cell, ...errorAt(cells, cell) }))
    .filter(({ cell, error }) => error !== "" && !(error === "#N/A" && isOptional(cell.heading)));
  const follows = ({ formula }: { readonly formula: string }): boolean =>
    wrong.some(({ cell }) => formula.includes(`[${cell.heading}]`));
  // what goes wrong because another of them did is said after it, wherever its column stands
  const causesFirst = [...wrong.filter((each) => !follows(each)), ...wrong.filter(follows)];
  const headings = new Map<string, string[]>();
  for (const { cell, error, formula } of causesFirst) {
    const reason = await asked(() => reasonOf(host, formula, cell.block));
    const says = isFault(reason) ? "its formula gives no answer." : reason;
    const about = `(${error}) ${says}`;
    headings.set(about, [...(headings.get(about) ?? []), cell.heading]);
  }
  return [...headings].map(([says, names]) => `${list(names)} ${says}`);
}
