/** The partner copy: every formula of ours in plain functions, with helper cells on a sheet it adds. */
import type { Twin } from "../../functions/twin";
import type { Package } from "../../xlsx/package/package";
import { forgetFormulas } from "../../xlsx/patch/calculation-chain";
import type { CellContext } from "../../xlsx/read/cells";
import { type Budget, scanSheet } from "../../xlsx/read/sheet-scan";
import type { ListedSheet, WorkbookPart } from "../../xlsx/read/workbook-part";
import { Converter, mayCallUs } from "./converter";
import type { Facts } from "./facts";
import type { Ledger } from "./ledger";
import { NameFormulas } from "./parts/name-formulas";
import type { Tally } from "./report";
import { type ReadSheet, SheetCopy } from "./parts/sheet-copy";
import { SheetFormulas } from "./parts/sheet-formulas";
import { changeTables } from "./parts/table-formulas";
import { Workings } from "./workings/workings";

export interface Reading {
  readonly file: Package;
  readonly workbook: WorkbookPart;
  readonly facts: Facts;
  readonly context: Omit<CellContext, "part" | "budget">;
  readonly budget: Budget;
}

function readSheet(reading: Reading, listed: ListedSheet): ReadSheet | undefined {
  const { file, facts, context, budget } = reading;
  if (listed.kind !== "cells") return undefined;
  const text = file.need(listed.part);
  if (!mayCallUs(text)) return undefined;
  const formulas = new SheetFormulas(listed.name, facts, { ...context, part: listed.part, budget });
  const { frame } = scanSheet(listed.part, text, formulas, budget);
  return { listed, text, frame, found: formulas.found };
}

/** Returns the helper cells, which the caller puts on a sheet. */
export function writePlainFormulas(
  reading: Reading,
  twinOf: (id: string) => Twin | undefined,
  tally: Tally,
  ledger: Ledger,
): Workings {
  const { file, workbook, facts } = reading;
  const converter = new Converter(facts, twinOf);
  const read = workbook.sheets.flatMap((listed) => readSheet(reading, listed) ?? []);
  const copies = read.map((sheet) => new SheetCopy(sheet, converter, tally));
  const names = new NameFormulas(file, converter, tally);
  const workings = new Workings([
    ...copies.flatMap(({ instances }) => instances),
    ...names.instances,
  ]);
  const dropped = new Map<number, ReadonlySet<string>>();
  for (const [index, copy] of copies.entries()) {
    const cells = copy.write(file, ledger);
    if (cells.length > 0) dropped.set(read[index]?.listed.id ?? 0, new Set(cells));
  }
  changeTables(file, facts, converter, tally, ledger);
  names.write(file, ledger);
  forgetFormulas(file, workbook.part, dropped);
  return workings;
}
