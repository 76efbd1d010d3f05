/** Questions to a host, each with the answer of its kind; a host that answers something else has failed. */
import {
  type Cells,
  type Fault,
  fault,
  type Host,
  isFault,
  type Names,
  type Nothing,
  type Question,
  type Sheets,
  type Table,
  type Values,
} from "../../sheet/port";
import { asked } from "./asked";

interface Answers {
  readonly cells: Cells;
  readonly values: Values;
  readonly table: Table | Nothing;
  readonly sheets: Sheets;
  readonly names: Names;
  readonly selection: Cells;
}
type To<Asked> = Asked extends { readonly ask: infer Kind extends keyof Answers }
  ? Answers[Kind]
  : never;

const isAnswer = ({ ask }: Question, kind: string | undefined): boolean =>
  ask === "selection" ? kind === "cells" : kind === ask || (ask === "table" && kind === "nothing");

/** @example const found = await read(host, [{ ask: "sheets" }, { ask: "names" }]) */
export async function read<const Questions extends readonly Question[]>(
  host: Host,
  questions: Questions,
): Promise<{ [At in keyof Questions]: To<Questions[At]> } | Fault> {
  const found = await asked(() => host.read(questions));
  if (isFault(found)) return found;
  const odd = questions.find((question, at) => !isAnswer(question, found[at]?.kind));
  if (odd) return fault("failed", odd.ask);
  return found as unknown as { [At in keyof Questions]: To<Questions[At]> };
}

/** A table by name, with what its cells show; undefined when there is none. */
export async function readTable(
  host: Host,
  name: string,
): Promise<{ readonly table: Table; readonly values: Values["values"] } | undefined | Fault> {
  const found = await read(host, [{ ask: "table", name }]);
  if (isFault(found)) return found;
  const [table] = found;
  if (table.kind === "nothing") return undefined;
  const answered = await read(host, [{ ask: "values", block: table.block }]);
  return isFault(answered) ? answered : { table, values: answered[0].values };
}
