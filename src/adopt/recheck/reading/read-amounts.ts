/** How much oil a row says, with its unit: beside the figure, in a column of units, or in the heading. */
import { quoted } from "../../../core/problem/quoted";
import type { AmountUnit } from "../../../core/quantity/units";
import { amountWord, type MeantUnit, unitMeant } from "../../recognising/answers";
import { isKnown, type LogbookMapping } from "../../recognising/mapping";
import type { HeldCell } from "../../recognising/sheet-cells";
import { figureAndWords, figureFrom, isEither } from "../../recognising/typed-number";
import { notRead, type Unread } from "./unread";

export interface Amount {
  readonly value: number;
  readonly unit: AmountUnit;
}

export interface AmountRead {
  readonly amount: Amount | undefined;
  readonly unread: readonly Unread[];
}

const nothing: AmountRead = { amount: undefined, unread: [] };
const hidden = (why: string): AmountRead => ({
  amount: undefined,
  unread: [{ why, hides: "dose" }],
});

/** @param cell the amount's; @param unitText what the column of units says; @param inHeading its heading's */
export function amountReader(
  mapping: LogbookMapping,
  cell: (row: number) => HeldCell | undefined,
  unitText: (row: number) => string,
  inHeading: MeantUnit | undefined,
): (row: number) => AmountRead {
  const hasUnits = isKnown(mapping, "amountUnit");
  const ofHeading = amountWord(mapping);
  const known = new Map<string, ReturnType<typeof unitMeant>>();
  const meant = (word: string): ReturnType<typeof unitMeant> => {
    if (!known.has(word)) known.set(word, unitMeant(mapping, word));
    return known.get(word);
  };
  return (row) => {
    const value = cell(row)?.value ?? "";
    const parts = typeof value === "string" ? figureAndWords(value) : undefined;
    const figure = figureFrom(parts ? parts.figure : value, mapping.commas, undefined);
    if (!figure) {
      if (typeof value === "object") return hidden(`the amount of oil holds ${value.error}`);
      return value === ""
        ? nothing
        : hidden(
            `the amount of oil is ${quoted(String(value))}${isEither(String(value)) ? `, ${notRead(String(value))}` : ""}`,
          );
    }
    if (figure.value === 0) return nothing;
    const own = parts && parts.words !== "" ? parts.words : unitText(row).trim();
    const word = own === "" ? ofHeading : own;
    if (own === "" && inHeading)
      return {
        amount: { value: figure.value * inHeading.times, unit: inHeading.unit },
        unread: [],
      };
    const unit = word === "" && !hasUnits ? undefined : meant(word);
    if (unit) return { amount: { value: figure.value * unit.times, unit: unit.unit }, unread: [] };
    return hidden(
      word === ""
        ? "the unit of the amount of oil is not said"
        : `how much one ${quoted(word)} of oil is, is not said`,
    );
  };
}
