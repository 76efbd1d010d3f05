/** Copies for the tests, with twins so simple that what they write can be said by hand. */
import type { Twin } from "../../../src/functions/twin";
import { shareWorkbook, type Shared, type ShareOptions } from "../../../src/partner/sharing";
import { isFileProblem, sayFile } from "../../../src/xlsx";
import { type Parts, partsOf } from "../../xlsx/files";

const text = (twinCall: Parameters<Twin>[0], name: string): string =>
  twinCall.argument(name)?.text ?? "0";

/** Mean titre less mean blank, without a helper cell. */
const corrected: Twin = (call) => ({
  kind: "formula",
  formula: `AVERAGE(${text(call, "titres")})-AVERAGE(${text(call, "blanks")})`,
});

/** Through one helper cell. */
const acidValue: Twin = (call) => {
  const acid = call.helper(
    "acid, mmol",
    `${text(call, "correctedTitre")}*${text(call, "molarity")}`,
  );
  return { kind: "formula", formula: `56.1*${acid}/${text(call, "sampleMass")}` };
};

/** Each cell by itself. */
const flags: Twin = (call) => {
  const titres = call.argument("readings");
  if (!titres) return { kind: "none", reason: "it has no titres" };
  const rows = Array.from({ length: titres.rows }, (_, row) =>
    Array.from({ length: titres.columns }, (__, column) => `${titres.cell(row, column)}>3`),
  );
  return { kind: "table", formulas: rows };
};

/** A label that stays and a figure that follows. */
const table: Twin = (call) => ({
  kind: "table",
  formulas: [
    [undefined, `COUNT(${text(call, "readings")})`],
    [undefined, `AVERAGE(${text(call, "readings")})`],
  ],
});

const twins: Readonly<Record<string, Twin>> = {
  CORRECTED: corrected,
  ACIDVALUE: acidValue,
  OUTLIERS: flags,
  SPREAD: table,
  ROUTE: () => ({ kind: "value" }),
  METHANOL: () => ({ kind: "none", reason: "it is out of reach" }),
  FFAFROMACIDVALUE: (call) => ({
    kind: "formula",
    formula: `${text(call, "acidValue")}*282/561`,
  }),
  // Far too long for a cell.
  SOAP: (call) => ({
    kind: "formula",
    formula: Array.from({ length: 3000 }, () => text(call, "acidValue")).join("+"),
  }),
  MOLARITY: (call) => ({
    kind: "formula",
    formula: Array.from({ length: 1000 }, () => text(call, "mass")).join("+"),
  }),
};

const simpleTwin = (id: string): Twin | undefined => twins[id];

export function shared(bytes: Uint8Array, options: Partial<ShareOptions> = {}): Shared {
  const made = shareWorkbook(bytes, {
    kind: "partner",
    fileName: "log.xlsx",
    twinOf: simpleTwin,
    ...options,
  });
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}

export const sharedParts = (bytes: Uint8Array, options: Partial<ShareOptions> = {}): Parts =>
  partsOf(shared(bytes, options).bytes);

/** The rows of a sheet, as the file writes them. */
export function rowsIn(parts: Parts, sheet = 1): string {
  const part = parts[`xl/worksheets/sheet${String(sheet)}.xml`] ?? "";
  return /<sheetData>(.*)<\/sheetData>/s.exec(part)?.[1] ?? part;
}

/** What a person reads on a sheet of ours, cell after cell. */
export const wordsIn = (parts: Parts, sheet: number): string[] =>
  [...rowsIn(parts, sheet).matchAll(/<t(?: [^>]*)?>([^<]*)<\/t>/g)].map(([, found = ""]) => found);

/** The formulas on a sheet, by cell. */
export function formulasIn(parts: Parts, sheet = 1): Record<string, string> {
  const cells = rowsIn(parts, sheet).matchAll(/<c r="([A-Z]+\d+)"[^>]*>(?:<f[^>]*>([^<]*)<\/f>)/g);
  return Object.fromEntries(
    [...cells].map(([, cell = "", formula = ""]) => [
      cell,
      formula.replaceAll("&gt;", ">").replaceAll("&lt;", "<").replaceAll("&amp;", "&"),
    ]),
  );
}
