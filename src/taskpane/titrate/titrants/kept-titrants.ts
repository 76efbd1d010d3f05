/** The titrants of the table Titrants as they are offered: a button's words, and what it takes in. */
import { isProblem } from "../../../core/problem/problem";
import { baseNamed } from "../../../core/reference/bases";
import { limits, misses } from "../../../core/reference/limits";
import { exact } from "../../../core/exact/exact";
import type { TitrantHistory } from "../../../workbook/over-time/titrant-history";
import { titrantLine } from "../../../workbook/over-time/titrant-line";
import { dayOfSheet, daysAgo, sheetDay } from "../../widgets/day";
import { digits, digitsKept } from "../../widgets/shown-number";
import type { Draft } from "../draft";
import type { TakenTitrant } from "./take-titrant";

export interface Offer {
  /** "0.0997 mol/L KOH, bottle K-5". */
  readonly name: string;
  /** "Checked 15 days ago by KHP, ± 0.4 %". */
  readonly about: string;
  readonly taken: TakenTitrant;
  /** Where its strength comes from, said under the box that holds it. */
  readonly from: string;
}

const fromTable = "As the table Titrants has it.";
const fromLine = "Worked out for today, from the line of its checks.";
/** Neither the one nor the other. */
const fromHand = "Typed: the table Titrants has another strength for this bottle.";

/** @param strength as typed, with the mark of whoever typed it */
export const isTaken = (
  { taken }: Offer,
  { picked, typed, words }: Draft,
  inMark: (text: string) => string,
): boolean =>
  picked.way === "kept" &&
  words.bottle === taken.bottle &&
  typed.kept === inMark(taken.strength) &&
  words.checkedOn === taken.checkedOn;

/** Where the strength of a titrant kept in Titrants comes from; "" while there is none. */
export function keptFrom(
  offers: readonly Offer[],
  draft: Draft,
  inMark: (text: string) => string,
): string {
  if (draft.picked.way !== "kept" || (draft.typed.kept ?? "").trim() === "") return "";
  const offer = offers.find((each) => isTaken(each, draft, inMark));
  if (offer) return offer.from;
  return offers.some(({ taken }) => taken.bottle === draft.words.bottle) ? fromHand : "";
}

/** More bottles are not in use at once. */
const mostOffered = 4;
/** Of a strength that is taken in. */
const strengthDigits = 4;

const percentWords = (percent: number | undefined): string =>
  percent === undefined ? ", ± not known" : `, ± ${digits(percent, 2)} %`;

function takenOf(
  { titrant, latest }: TitrantHistory,
  base: TakenTitrant["base"],
  strength: number,
  percent: number | undefined,
): TakenTitrant {
  return {
    bottle: titrant,
    base,
    strength: digits(strength, strengthDigits),
    percent: percent === undefined || percent <= 0 ? "" : digits(percent, 2),
    howKnown: latest.howKnown,
    checkedOn: dayOfSheet(latest.day),
  };
}

const nameOf = (strength: number, { titrant, base }: TitrantHistory): string =>
  `${digitsKept(strength, 4)} mol/L ${base}, bottle ${titrant}`;

function latestOf(history: TitrantHistory, base: TakenTitrant["base"], today: number): Offer {
  const { strength, percent, howKnown, day } = history.latest;
  const way = howKnown === "" ? "" : ` by ${howKnown}`;
  const verb = howKnown === "weighing" ? "Made" : "Checked";
  return {
    name: nameOf(strength, history),
    about: `${verb} ${daysAgo(today - Math.floor(day))}${way}${percentWords(percent)}`,
    taken: takenOf(history, base, strength, percent),
    from: fromTable,
  };
}

/** Where its line changes, the strength it has come to. */
function byLine(history: TitrantHistory, base: TakenTitrant["base"], today: number): Offer[] {
  const line = titrantLine(history, today);
  if (isProblem(line) || !line.isChanging) return [];
  const percent = line.surePercent;
  return [
    {
      name: nameOf(line.strength, history),
      about: `Today, by the line of its ${line.checks} checks${percentWords(percent)}`,
      taken: takenOf(history, base, line.strength, percent),
      from: fromLine,
    },
  ];
}

const isStrength = (strength: number): boolean =>
  misses(exact(strength), limits.molarity) === undefined;

/** Of each bottle the latest check, and what its line makes of it today; the one checked last first. */
export const offersOf = (histories: readonly TitrantHistory[], today: string): Offer[] =>
  histories
    .flatMap((history) => {
      const base = baseNamed(history.base)?.name;
      const isOfNow = Math.floor(history.latest.day) <= sheetDay(today);
      return base !== undefined && isOfNow && isStrength(history.latest.strength)
        ? [{ history, base }]
        : [];
    })
    .slice(0, mostOffered)
    .flatMap(({ history, base }) => [
      latestOf(history, base, sheetDay(today)),
      ...byLine(history, base, sheetDay(today)),
    ]);
