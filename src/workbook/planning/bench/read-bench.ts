/** What the table `Bench` says, believed row by row. Reads only. */
import { exact } from "../../../core/exact/exact";
import { shown } from "../../../core/exact/rounding";
import { allowedWords, misses } from "../../../core/reference/limits";
import { type CellContent, type Fault, type Host, isFault } from "../../../sheet/port";
import {
  type BenchId,
  benchIds,
  benchSettings,
  type BenchSetting,
  benchTable,
  type BenchValues,
} from "../../tables/bench";
import { isHeading, rowsUnder } from "../headings";
import { valueText } from "../preview-text";
import { readTable } from "../read";

export interface BenchRead {
  readonly values: BenchValues;
  /** Rows that say something no task can begin from, a sentence each. */
  readonly odd: readonly string[];
}

type Understood = { readonly value: string } | { readonly odd: string };

function understood(setting: BenchSetting, cell: CellContent): Understood {
  const text = valueText(cell).trim();
  if (setting.words !== undefined) {
    const word = setting.words.find((each) => each.toLowerCase() === text.toLowerCase());
    return word === undefined
      ? { odd: `${setting.name} says "${text}"; it can be ${setting.words.join(", ")}.` }
      : { value: word };
  }
  if (setting.limit === undefined) return { value: text };
  const figure = typeof cell === "number" ? exact(cell) : undefined;
  if (!figure || misses(figure, setting.limit) !== undefined) {
    return {
      odd: `${setting.name} says "${text}"; it can be a number ${allowedWords(setting.limit)}.`,
    };
  }
  return { value: shown(figure) };
}

/** @returns undefined when there is no such table */
export async function readBench(host: Host): Promise<BenchRead | undefined | Fault> {
  const found = await readTable(host, benchTable);
  if (found === undefined || isFault(found)) return found;
  const values: Partial<Record<BenchId, string>> = {};
  const odd: string[] = [];
  for (const under of rowsUnder(found.table.headings, found.values.slice(1))) {
    const name = under("Setting");
    const id = benchIds.find(
      (each) => typeof name === "string" && isHeading(benchSettings[each].name, name),
    );
    const cell = under("Value");
    // the first row of a name counts
    if (id === undefined || cell === "" || id in values) continue;
    const read = understood(benchSettings[id], cell);
    if ("value" in read) values[id] = read.value;
    else odd.push(read.odd);
  }
  return { values, odd };
}
