/** What a formula refers to, by way of the host port: as much as explaining it asks for. */
import {
  type Block,
  type CellContent,
  type Found,
  type Host,
  isFault,
  type Question,
} from "../../sheet/port";
import { type KnownTable, meantBy } from "../../sheet/formula/meant";
import { explainFormula, type Lookup } from "../explain/explain";

/** A table first, then its cells; and what an argument holds may ask for more. */
const mostRounds = 6;

/** More cells are not read for an explanation: a formula may name every cell of a sheet. */
const mostCells = 200_000;

/** As a function is handed it: an error as an error cell. */
const asGiven = (content: CellContent): unknown =>
  typeof content === "object" ? { type: "Error", basicValue: content.error } : content;

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
      return rows * columns > mostCells ? undefined : { ask: "values", block: meant.block };
    }
    const isTable = meant.kind === "table-wanted" && !this.noTables.has(meant.name);
    return isTable ? { ask: "table", name: meant.name } : undefined;
  }

  private learn(text: string, question: Question, found: Found | undefined): void {
    if (question.ask !== "table") {
      const rows =
        found?.kind === "values" ? found.values.map((row) => row.map(asGiven)) : undefined;
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

/** What the references of a formula hold now, as seen from its cell. Reads only. */
export async function lookupFor(host: Host, formula: string, from: Block): Promise<Lookup> {
  const reading = new Reading(host, formula, from);
  if (formula !== "") await reading.all();
  return (text) => reading.values.get(text);
}
