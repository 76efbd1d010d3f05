/** What can be added to a logbook now, and what each of the others still lacks. */
import { type AmountUnit, amountUnits } from "../../core/quantity/units";
import type { LogbookMapping } from "../recognising/mapping";
import { columnOf } from "../recognising/mapping";
import { timesOwn } from "../recognising/measures/measured";
import type { SheetCells } from "../recognising/sheet-cells";
import { type Added, type AddedId, addedColumns, headingOf } from "./added";
import { plainFormula } from "./plain-formulas";
import type { Part } from "./part";
import { type Sources, sourcesOf } from "./sources";
import { readsIt, type TextFigures, textFiguresIn, textInTheWay } from "./text-figures";
import { titreFormula } from "./titre-formulas";

export type Spelling = "functions" | "plain";

export interface Offer {
  readonly id: AddedId;
  readonly heading: string;
  readonly format: string;
  readonly width: number;
  /** With its equals sign, for a row counted from 1; undefined when something is lacking. */
  readonly formula: Part | undefined;
  /** What is lacking: "the assay of the lye"; "" for nothing. */
  readonly lacks: string;
  /** The logbook has a column of that kind already. */
  readonly isThere: boolean;
}

/** What one of each unit comes to in grams, or in litres. */
const perUnit = (measured: AmountUnit["measures"], times: number): Record<string, number> =>
  Object.fromEntries(
    amountUnits
      .filter(({ measures }) => measures === measured)
      .map(({ inHeadings, factor }) => [inHeadings, factor.times(times).toNumber()]),
  );
const grams = {
  ...perUnit("mass", 1000),
  oz: timesOwn({ role: "catalyst", unit: "oz" }),
};

/** These may stand in the unit of their own column; lye is weighed, methanol measured. */
const mayBeIn: Partial<Record<AddedId, Readonly<Record<string, number>>>> = {
  catalyst: grams,
  methanol: perUnit("volume", 1),
};

/** In the unit of their own column of the kind, where they have one that measures the same. */
function unitOf(mapping: LogbookMapping, { id, unit }: Added): string {
  const own = mayBeIn[id] && columnOf(mapping, id)?.unit;
  return own !== undefined && mayBeIn[id]?.[own] !== undefined ? own : unit;
}

/** Rows without readings stay empty; a reading that stands as text is one, and its row shows an error. */
function guarded(
  part: Part,
  { titres, heldAcidValue, heldFfaCell, amountHeld }: Sources,
  id: AddedId,
  texts: readonly TextFigures[],
): Part {
  const from = titres ?? heldAcidValue ?? heldFfaCell;
  const dosed = id === "catalyst" || id === "methanol" ? amountHeld : undefined;
  return (row) => {
    const empty = [from, dosed].flatMap((each) => {
      if (!each) return [];
      const cells = each(row);
      const count = texts.some((text) => readsIt(cells, text)) ? "COUNTA" : "COUNT";
      return [`${count}(${cells})=0`];
    });
    const test = empty.length === 1 ? (empty[0] ?? "") : `OR(${empty.join(",")})`;
    return `=IF(${test},"",${part(row)})`;
  };
}

export function offers(mapping: LogbookMapping, cells: SheetCells, spelling: Spelling): Offer[] {
  const sources = sourcesOf(mapping, cells);
  const texts = textFiguresIn(mapping, cells);
  return addedColumns.map((added) => {
    const built =
      spelling === "plain" ? plainFormula(added.id, sources) : titreFormula(added.id, sources);
    const unit = unitOf(mapping, added);
    const divisor = unit === added.unit ? undefined : mayBeIn[added.id]?.[unit];
    const inUnit = (part: Part): Part =>
      divisor === undefined ? part : (row) => `(${part(row)})/${String(divisor)}`;
    const whole =
      "formula" in built ? guarded(inUnit(built.formula), sources, added.id, texts) : undefined;
    const inTheWay = whole ? textInTheWay(whole, mapping.place.firstRow + 1, texts) : "";
    return {
      id: added.id,
      heading: headingOf({ ...added, unit }),
      format: unit === "kg" ? "0.000" : added.format,
      width: added.width,
      formula: inTheWay === "" ? whole : undefined,
      lacks: "lacks" in built ? built.lacks : inTheWay,
      isThere: columnOf(mapping, added.id) !== undefined,
    };
  });
}
