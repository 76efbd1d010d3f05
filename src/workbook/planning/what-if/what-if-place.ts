/** What is at the place a table is to go to: its cells, and what keeps it from going there. */
import {
  type Block,
  type Cells,
  type Fault,
  fault,
  type Host,
  isFault,
  type Names,
  type Sheets,
} from "../../../sheet/port";
import { address } from "../../../sheet/address";
import { asked } from "../asked";
import type { Refusal } from "../plan";
import { read } from "../read";
import { refused } from "../../../sheet/refusal";
import { refusal } from "../refusal";
import { limits } from "../../../xlsx/limits";
import { whatIfWords } from "./what-if-wording";

/** Where the user wants the table. */
export type WhatIfPlace =
  | { readonly kind: "new-sheet" }
  | {
      readonly kind: "cell";
      readonly sheet: string;
      readonly row: number;
      readonly column: number;
    };

export interface Around {
  readonly sheets: Sheets;
  readonly names: Names;
  readonly hasCharts: boolean;
  readonly program: string;
}

export async function readAround(host: Host): Promise<Around | Fault> {
  const can = await asked(() => host.capabilities());
  if (isFault(can)) return can;
  if (!can.canWrite) return fault("read-only");
  const found = await read(host, [{ ask: "sheets" }, { ask: "names" }]);
  if (isFault(found)) return found;
  const [sheets, names] = found;
  return { sheets, names, hasCharts: can.hasCharts, program: can.program };
}

const meets = (one: Block, other: Block): boolean =>
  one.sheet.toLowerCase() === other.sheet.toLowerCase() &&
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;

/** A single formula in a table's column may become the formula of the whole column. */
async function tableThere(
  host: Host,
  { names }: Around,
  block: Block,
): Promise<Refusal | Fault | undefined> {
  if (names.tables.length === 0) return undefined;
  const found = await read(
    host,
    names.tables.map((name) => ({ ask: "table", name }) as const),
  );
  if (isFault(found)) return found;
  const hit = found.find((each) => each.kind === "table" && meets(each.block, block));
  return hit?.kind === "table" ? refused(whatIfWords.inTable(address(block), hit.name)) : undefined;
}

/** @returns what the cells of the block hold now, or why nothing may be written there */
export async function readPlace(
  host: Host,
  around: Around,
  block: Block,
): Promise<Cells | Refusal> {
  const sheet = around.sheets.sheets.find(({ name }) => name === block.sheet);
  if (!sheet) return refused(whatIfWords.noSheet(block.sheet));
  if (sheet.isProtected) return refusal(fault("sheet-protected", sheet.name));
  if (block.row + block.rows > limits.rows || block.column + block.columns > limits.columns) {
    return refused(whatIfWords.noRoom(address(block)));
  }
  const stopped = await tableThere(host, around, block);
  if (isFault(stopped)) return refusal(stopped);
  if (stopped) return stopped;
  const found = await read(host, [{ ask: "cells", block }]);
  return isFault(found) ? refusal(found) : found[0];
}
