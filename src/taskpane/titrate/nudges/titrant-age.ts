/**
 * How old a titrant is: by its own line where it has three checks, by days where it has fewer. No fixed
 * number of days makes one old.
 */
import { isProblem } from "../../../core/problem/problem";
import { fewestStrengths } from "../../../core/record/strength-line";
import { lineWords } from "../../../workbook/over-time/strength-series";
import { isSameTitrant, type TitrantHistory } from "../../../workbook/over-time/titrant-history";
import { titrantLine } from "../../../workbook/over-time/titrant-line";
import { daysAgo, daysBetween, sheetDay } from "../../widgets/day";
import { needsAssay, setByWay } from "../strength";
import { know, check, type Nudge, type Seen } from "./nudge";

const about = "age";
/** How a titrant was known that was made and not checked, in the words of Titrants. */
const byWeighing = setByWay.weighed;
const carbonate = "each 2 % of it turned to carbonate costs 1 % of the strength";

/** What makes it a line. */
function toCome({ checks }: TitrantHistory): string {
  const more = fewestStrengths - checks.length;
  if (more <= 0) return "a check on another day makes a line that says when it is old";
  return more === 1
    ? "one more check makes a line that says when it is old"
    : `${more} more checks make a line that says when it is old`;
}

/** Of a bottle in Titrants. */
function ofHistory(history: TitrantHistory, today: string): Nudge[] {
  const now = sheetDay(today);
  const line = titrantLine(history, now);
  if (!isProblem(line)) return [(line.isOld ? check : know)(about, lineWords(line))];
  const days = now - Math.floor(history.latest.day);
  if (days < 0) return [];
  const isOnlyMade = history.checks.every(({ howKnown }) => howKnown === byWeighing);
  if (isOnlyMade)
    return [
      know(about, `Made ${daysAgo(days)}, by weighing, and not checked since: KHP does that.`),
    ];
  const verb = history.latest.howKnown === byWeighing ? "Made" : "Checked";
  return [know(about, `${verb} ${daysAgo(days)}; ${toCome(history)}.`)];
}

/** Of a titrant that nobody kept. */
function ofDay(seen: Seen, days: number | undefined): Nudge[] {
  const { way } = seen.draft.picked;
  const isWeighed = needsAssay(way);
  if (days !== undefined) {
    const kept = `kept in Titrants, ${fewestStrengths} checks make a line that says when it is old`;
    return [know(about, `${isWeighed ? "Made" : "Checked"} ${daysAgo(days)}; ${kept}.`)];
  }
  if (way === "phthalate" || way === "certified" || way === "kept") return [];
  return isWeighed
    ? [
        check(
          about,
          `Made by weighing, not yet checked. Lye takes up water and carbon dioxide (${carbonate}); ISO 660 has the titrant checked before use: KHP does that.`,
        ),
      ]
    : [
        know(
          about,
          "When was it made or last checked? ISO 660 has the titrant checked before use: lye takes up carbon dioxide.",
        ),
      ];
}

export function aboutAge(seen: Seen, histories: readonly TitrantHistory[]): Nudge[] {
  const { draft, today } = seen;
  const days = daysBetween(draft.words.checkedOn, today);
  if (days !== undefined && days < 0) {
    return [check(about, "That day is in the future: check the date.")];
  }
  const bottle = { titrant: draft.words.bottle, base: draft.picked.base };
  // known in another way, and no day of it yet: nothing of the table is said of it
  const isOfTable = draft.picked.way === "kept" || days !== undefined;
  const history = isOfTable ? histories.find((each) => isSameTitrant(each, bottle)) : undefined;
  return history ? ofHistory(history, today) : ofDay(seen, days);
}
