/** How much oil, in formulas: with the unit that a column, the heading or an answer says. */
import { exact } from "../../core/exact/exact";
import { type AmountUnit, amountUnitNamed, amountUnits } from "../../core/quantity/units";
import { amountWord, type MeantUnit, unitMeant } from "../recognising/answers";
import { columnOf, type LogbookMapping } from "../recognising/mapping";
import { heldCell, type SheetCells } from "../recognising/sheet-cells";
import { always, chosenBy, tooMany, translated, wordsIn } from "./column-words";
import type { Part } from "./part";

export interface AmountParts {
  /** The figure as it stands in its cell. */
  readonly amountHeld: Part | undefined;
  /** The figure, counted in `unit`. */
  readonly amount: Part | undefined;
  readonly unit: Part | undefined;
  /** kg in one of what the row's figure counts, for plain formulas. @param density kg/L */
  readonly kilogramsInOne: ((row: number, density: string) => string) | undefined;
}

const none: AmountParts = {
  amountHeld: undefined,
  amount: undefined,
  unit: undefined,
  kilogramsInOne: undefined,
};

const inOne = ({ unit, times }: MeantUnit, density: string): string => {
  const factor = unit.factor.times(exact(times)).toString();
  return unit.measures === "mass" ? factor : `${factor}*${density}`;
};

const inOneUnit = (amount: Part | undefined, meant: MeantUnit | undefined): AmountParts =>
  amount && meant
    ? {
        amountHeld: amount,
        amount: meant.times === 1 ? amount : (row) => `${amount(row)}*${String(meant.times)}`,
        unit: always(meant.unit.name),
        kilogramsInOne: (_, density) => inOne(meant, density),
      }
    : none;

const once = (unit: AmountUnit | undefined): MeantUnit | undefined => unit && { unit, times: 1 };

/** For rows that are still to come. */
const usual = amountUnits.filter(({ name }) => name === "l" || name === "kg");

export function amountParts(
  mapping: LogbookMapping,
  cells: SheetCells,
  plain: (role: "oilAmount" | "oilMass" | "amountUnit") => Part | undefined,
  inHeading: MeantUnit | undefined,
): AmountParts {
  const amount = plain("oilAmount");
  if (!amount) return inOneUnit(plain("oilMass"), once(amountUnitNamed("kg")));
  const cell = plain("amountUnit");
  const ofHeading = amountWord(mapping);
  const ofNone = inHeading ?? unitMeant(mapping, ofHeading);
  if (!cell) return inOneUnit(amount, ofNone);
  const column = columnOf(mapping, "amountUnit")?.column;
  const from = mapping.constants.find(({ role }) => role === "amountUnit")?.from;
  const lone = from?.kind === "cell" ? heldCell(cells, from.row, from.column).value : from?.value;
  const held = column === undefined ? [String(lone ?? "")] : wordsIn(cells, mapping, column);
  const meanings = [...held, ""].flatMap((word) => {
    const meant = word === "" ? ofNone : unitMeant(mapping, word);
    return meant ? [{ word, ...meant }] : [];
  });
  if (tooMany(meanings.map(({ word }) => word))) return none;
  const known = new Set(meanings.map(({ word }) => word.toLowerCase()));
  const coming = usual
    .filter(({ name }) => !known.has(name))
    .map((unit) => ({ word: unit.name, unit, times: 1 }));
  const counted = meanings.filter(({ times }) => times !== 1);
  return {
    amountHeld: amount,
    amount:
      counted.length === 0
        ? amount
        : (row) => {
            const each = counted.map(({ word, times }) => [word, String(times)] as const);
            return `${amount(row)}*${chosenBy(cell(row), each, "1")}`;
          },
    unit: translated(
      cell,
      meanings.map(({ word }) => word),
      (word) =>
        amountUnitNamed(word) ? undefined : meanings.find((each) => each.word === word)?.unit.name,
    ),
    kilogramsInOne: (row, density) =>
      chosenBy(
        cell(row),
        [...meanings, ...coming].map((each) => [each.word, inOne(each, density)] as const),
        "NA()",
      ),
  };
}
