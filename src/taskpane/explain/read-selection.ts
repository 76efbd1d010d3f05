/** The selected cell by way of the host port: the cell first, then whatever its formula refers to. */
import { areaName } from "../../sheet/cell-name";
import {
  type Block,
  type CellContent,
  type Cells,
  type Found,
  type Host,
  isFault,
  type Question,
} from "../../sheet/port";
import { explainFormula } from "../../workbook/explain/explain";
import { type KnownTable, meantBy } from "../../sheet/formula/meant";
import type { ShownCell } from "./shown-cell";

/** A table first, then its cells; and what an argument holds may ask for more. */
const mostRounds = 6;

/** More cells are not read for an explanation: a formula may name every cell of a sheet. */
const mostCells = 200_000;

const isError = (content: CellContent): content is { readonly error: string } =>
  typeof content === "object";

const shownContent = (content: CellContent): string => {
  if (isError(content)) return content.error;
  return typeof content === "boolean" ? String(content).toUpperCase() : String(content);
};

/** As a function is handed it: an error as an error cell. */
const asGiven = (content: CellContent): unknown =>
  isError(content) ? { type: "Error", basicValue: content.error } : content;

/** What has been read so far, by the text of the reference. */
class Reading {
  readonly values = new Map<string, unknown[][] | undefined>();
  private readonly tables = new Map<string, KnownTable>();
  private readonly noTables = new Set<string>();

  constructor(
    private readonly host: Host,
    private readonly formula: string,
    private readonly from: Block,
  ) {}

  /** The references an explanation asks for that are not known yet. */
  private wanted(): string[] {
    const asked = new Set<string>();
    explainFormula(this.formula, (text) => {
      if (!this.values.has(text)) asked.add(text);
      return this.values.get(text);
    });
    return [...asked];
  }

  /** What must be asked to learn what a reference holds; undefined when it cannot be learnt. */
  private question(text: string): Question | undefined {
    const meant = meantBy(text, this.from, this.tables);
    if (meant.kind === "block") {
      const { rows, columns } = meant.block;
      return rows * columns > mostCells ? undefined : { ask: "cells", block: meant.block };
    }
    const isTable = meant.kind === "table-wanted" && !this.noTables.has(meant.name);
    return isTable ? { ask: "table", name: meant.name } : undefined;
  }

  private learn(text: string, question: Question, found: Found | undefined): void {
    if (question.ask !== "table") {
      const rows =
        found?.kind === "cells" ? found.values.map((row) => row.map(asGiven)) : undefined;
      this.values.set(text, rows);
    } else if (found?.kind === "table") this.tables.set(question.name, found);
    else this.noTables.add(question.name);
  }

  /** One call of the program a round, for all references together. */
  private async round(texts: readonly string[]): Promise<void> {
    const asked: { text: string; question: Question }[] = [];
    for (const text of texts) {
      const question = this.question(text);
      if (question) asked.push({ text, question });
      else this.values.set(text, undefined);
    }
    if (asked.length === 0) return;
    const found = await this.host.read(asked.map(({ question }) => question));
    for (const [place, { text, question }] of asked.entries()) {
      this.learn(text, question, isFault(found) ? undefined : found[place]);
    }
  }

  async all(): Promise<void> {
    for (let round = 0; round < mostRounds; round += 1) {
      const texts = this.wanted();
      if (texts.length === 0) return;
      await this.round(texts);
    }
  }
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
  const reading = new Reading(host, formula, block);
  if (formula !== "") await reading.all();
  return {
    sheet: block.sheet,
    address: areaName({ ...block, rows: 1, columns: 1 }),
    formula,
    shown: shownContent(firstOf(cells.values) ?? ""),
    note: "",
    lookup: (text) => reading.values.get(text),
  };
}
