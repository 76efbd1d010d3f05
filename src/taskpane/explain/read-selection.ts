/** The selected cell by way of the host port: the cell first, then whatever its formula refers to. */
import { type Block, type CellContent, type Cells, type Host, isFault } from "../../host/port";
import { explainFormula } from "../../workbook/explain/explain";
import type { ShownCell } from "./shown-cell";

/** A formula whose values are known may ask for more of them: an IF, for its branches. */
const mostRounds = 4;

const isError = (content: CellContent): content is { readonly error: string } =>
  typeof content === "object";

const shownContent = (content: CellContent): string => {
  if (isError(content)) return content.error;
  return typeof content === "boolean" ? String(content).toUpperCase() : String(content);
};

/** As a function is handed it: an error as an error cell. */
const asGiven = (content: CellContent): unknown =>
  isError(content) ? { type: "Error", basicValue: content.error } : content;

function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}

const addressOf = (block: Block): string => `${columnName(block.column)}${block.row + 1}`;

type Values = Map<string, unknown[][] | undefined>;

/** The references an explanation asks for that are not known yet. */
function wanted(formula: string, known: Values): string[] {
  const asked = new Set<string>();
  explainFormula(formula, (text) => {
    if (!known.has(text)) asked.add(text);
    return known.get(text);
  });
  return [...asked];
}

async function valuesFor(host: Host, formula: string, from: Block): Promise<Values> {
  const known: Values = new Map();
  for (let round = 0; round < mostRounds; round += 1) {
    const texts = wanted(formula, known);
    if (texts.length === 0) break;
    const found = await host.read(texts.map((text) => ({ ask: "reference", text, from })));
    for (const [place, text] of texts.entries()) {
      const cells = isFault(found) ? undefined : found[place];
      known.set(
        text,
        cells?.kind === "cells" ? cells.values.map((row) => row.map(asGiven)) : undefined,
      );
    }
  }
  return known;
}

const firstOf = <T>(rows: readonly (readonly T[])[]): T | undefined => rows[0]?.[0];

/** Undefined when nothing can be read, for example while a cell is being edited. */
export async function readSelection(host: Host): Promise<ShownCell | undefined> {
  const found = await host.read([{ ask: "selection" }]);
  const cells = isFault(found)
    ? undefined
    : found.find((each): each is Cells => each.kind === "cells");
  if (!cells) return undefined;
  const { block } = cells;
  const formula = firstOf(cells.formulas) ?? "";
  const known = formula === "" ? new Map() : await valuesFor(host, formula, block);
  return {
    sheet: block.sheet,
    address: addressOf(block),
    formula,
    shown: shownContent(firstOf(cells.values) ?? ""),
    note: "",
    lookup: (text) => known.get(text) as unknown[][] | undefined,
  };
}
