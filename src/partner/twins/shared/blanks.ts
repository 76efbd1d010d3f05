/** The blanks: left out or the word means 0, given but empty means that there is none yet. */
import type { Millilitre } from "../../../core/quantity/quantity";
import { deviations, sumOfSquares } from "../../../core/replicates/deviations";
import { meanBlank } from "../../../core/titration/corrected-titre";
import type { TwinArgument } from "../../../functions/twin";
import { constantOf } from "./constant";
import { allowedIn, cellsOf, filledIn, hasLogical, howMany } from "./list";
import type { Reading } from "./reading";
import { squaresAbout } from "./scatter";
import { always, figure, isEmpty, missing, never, plainSpaces, text, when, wrong } from "./text";

export interface BlanksText {
  /** Mean blank, mL; 0 when the solvent was neutralised. */
  readonly mean: string;
  /** How many; 0 when the solvent was neutralised. */
  readonly count: string;
  /** Their sum of squares about the mean, mL²; from deviations, never by the shortcut. */
  squares(): string;
}

const known = (blanks: readonly Millilitre[]): BlanksText => ({
  mean: figure(meanBlank(blanks)),
  count: String(blanks.length),
  squares: () => (blanks.length < 2 ? "0" : figure(sumOfSquares(deviations(blanks)))),
});

/** How many cells hold the word. */
const neutralised = (reading: Reading, range: TwinArgument): string =>
  (reading.reader("blanks").words ?? [])
    .map((word) => howMany(range, (cells) => `(LOWER(TRIM(${plainSpaces(cells)}))=${text(word)})`))
    .join("+");

function squaresOf(reading: Reading, range: TwinArgument, count: string): string {
  const figures = cellsOf(range).map((cell) =>
    when(isEmpty(cell), '""', when(`ISNUMBER(${cell})`, cell, '""')),
  );
  const column = reading.call.helperColumn("blank, mL", figures);
  return reading.call.helper(
    "blanks: sum of squares about their mean",
    when(`${count}<2`, "0", squaresAbout(column.text)),
  );
}

export function blanksOf(reading: Reading): BlanksText {
  const range = reading.call.argument("blanks");
  const given = range ? reading.constants("blanks", range) : reading.meaning("blanks", undefined);
  if (given?.isKnown) return known((given.value as readonly Millilitre[] | undefined) ?? []);
  if (!range) return known([]);

  const all = range.text;
  const filled = reading.call.helper("blanks: cells filled in", filledIn(range));
  const figures = allowedIn(reading, "blanks", all);
  const count = reading.call.helper(
    "blanks: how many, 0 when neutralised",
    when(
      `${filled}=0`,
      missing,
      when(
        hasLogical(range),
        wrong,
        when(
          `${neutralised(reading, range)}=${filled}`,
          "0",
          when(`${figures}=${filled}`, filled, wrong),
        ),
      ),
    ),
  );
  const average = reading.call.helper(
    "mean blank, mL",
    when(`${count}=0`, "0", `SUM(${all})/${count}`),
  );
  return { mean: average, count, squares: () => squaresOf(reading, range, count) };
}

/** Part of a blank that the rounding of its mean may make up. */
const rounding = 1e-14;

/** A titre that does not exceed the blank is refused. */
export function isAbove(titre: string, blank: string): string {
  const known = [titre, blank].map((each) => constantOf(each)?.value);
  const [most, least] = known;
  if (typeof most === "number" && typeof least === "number") {
    return most - least > rounding * least ? always : never;
  }
  return blank === "0" ? `${titre}>0` : `${titre}-${blank}>${figure(rounding)}*${blank}`;
}
