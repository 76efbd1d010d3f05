/** A workbook that the browser keeps: what is known of it beside its bytes. Believed part by part. */
import type { CellPlace } from "../../sheet/area";
import { isObject, textOf } from "../../taskpane/drafts/believed";
import { draftsOfExample, draftsOfFile } from "./drafts-of";
import { type FileOnDisk, fileFrom } from "./file-on-disk";

export interface Entry {
  /** One for each workbook; no name of a file. */
  readonly id: string;
  readonly name: string;
  /** Whose drafts the pane offers beside it. */
  readonly drafts: string;
  /** Milliseconds since 1970. */
  readonly keptAt: number;
  /** Bytes. */
  readonly size: number;
  /** All of it is in a file too. */
  readonly isInFile: boolean;
  /** It began as the example. */
  readonly isSample: boolean;
  /** Where one was. */
  readonly place?: CellPlace;
  /** The file that it is saved in, where the browser writes into files. */
  readonly disk?: FileOnDisk;
}

export interface Kept {
  readonly entry: Entry;
  readonly bytes: Uint8Array;
}

const isCount = (value: unknown): value is number =>
  typeof value === "number" && Number.isSafeInteger(value) && value >= 0;

export function placeFrom(value: unknown): CellPlace | undefined {
  if (!isObject(value)) return undefined;
  const { sheet, row, column } = value;
  return textOf(sheet) !== "" && isCount(row) && isCount(column)
    ? { sheet: textOf(sheet), row, column }
    : undefined;
}

/** Undefined when it is none, or half of one. */
export function entryFrom(value: unknown): Entry | undefined {
  if (!isObject(value)) return undefined;
  const { id, name, keptAt, size } = value;
  if (textOf(id) === "" || textOf(name) === "" || !isCount(keptAt) || !isCount(size)) {
    return undefined;
  }
  const isSample = value.isSample === true;
  // an earlier build kept none
  const byName = isSample ? draftsOfExample : draftsOfFile(textOf(name));
  const place = placeFrom(value.place);
  const disk = fileFrom(value.disk);
  return {
    id: textOf(id),
    name: textOf(name),
    drafts: typeof value.drafts === "string" ? value.drafts : byName,
    keptAt,
    size,
    isInFile: value.isInFile === true,
    isSample,
    ...(place ? { place } : {}),
    ...(disk ? { disk } : {}),
  };
}

const latestFirst = (entries: readonly Entry[]): Entry[] =>
  [...entries].sort((a, b) => b.keptAt - a.keptAt);

export const entriesFrom = (values: readonly unknown[]): Entry[] =>
  latestFirst(
    values.flatMap((value) => {
      const entry = entryFrom(value);
      return entry ? [entry] : [];
    }),
  );

/** How many are kept; more, where what is in no file would be lost. */
export const mostKept = 5;

/** The ones to be given up for the sake of later ones: never what is in no file, nor what is open. */
export const surplus = (entries: readonly Entry[], open: string): Entry[] =>
  latestFirst(entries)
    .slice(mostKept)
    .filter(({ id, isInFile }) => isInFile && id !== open);

/** A file opened again takes the place of what was kept of it, unless that holds what no file has. */
export const replacedBy = (entries: readonly Entry[], name: string): Entry | undefined =>
  entries.find((entry) => entry.name === name && entry.isInFile);
