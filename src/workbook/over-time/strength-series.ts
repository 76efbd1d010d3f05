/** The strength of one bottle of titrant, check by check, with its line, the band and the day it leaves 1 %. */
import { counted } from "../../sheet/counted";
import { isProblem } from "../../core/problem/problem";
import { fewestStrengths } from "../../core/record/strength-line";
import { say } from "../../core/problem/wording";
import { dayInWords } from "./day-words";
import { are, type Found } from "./series";
import type { TitrantHistory } from "./titrant-history";
import { type TitrantLine, titrantLine } from "./titrant-line";

const source = "Line and band: least squares with its 95 % interval (JCGM 100:2008, H.3).";

/** "Going by its checks, it has lost 0.6 % in 24 days", and when it is old. */
export function lineWords({ since, first, asked, checks, within, isOld }: TitrantLine): string {
  if (within === undefined) {
    return `Its ${String(checks)} checks show no change that chance does not explain.`;
  }
  const size = Number(Math.abs(since).toPrecision(2)).toString();
  const other = since < 0 ? "weaker" : "stronger";
  const changed = `Going by its checks, it has ${since < 0 ? "lost" : "gained"} ${size} % in ${String(asked - first)} days`;
  return isOld
    ? `${changed}, and is more than 1 % ${other} than at first, since ${dayInWords(within + 1)}: check it against KHP.`
    : `${changed}; from ${dayInWords(within + 1)} on it is more than 1 % ${other} than at first.`;
}

/** Its strength of today, with the ± that Titrate takes it in with. */
function todayWords({ strength, percent, surePercent }: TitrantLine): string {
  const sure = `± ${Number(surePercent.toPrecision(2)).toString()} %`;
  const whose = surePercent > percent ? ", as one check has it" : "";
  return `Today: ${strength.toPrecision(4)} mol/L ${sure}${whose}.`;
}

/** @param today the day asked; before the last check, that counts */
export function strengthSeries(history: TitrantHistory | undefined, today: number): Found {
  const shown = { title: "Titrant strength", unit: "mol/L", what: "Strength" } as const;
  if (!history) {
    const sentence =
      "No titrant is on record. Keep it in Titrants, from the first step of Titrate: three checks make a line.";
    return { kind: "too few", ...shown, leftOut: [], sentence };
  }
  const { checks, titrant, base, undated } = history;
  const title = `Titrant ${titrant}, ${base}`;
  const leftOut =
    undated > 0 ? [`${counted(undated, "check")} without a date ${are(undated)} left out.`] : [];
  const now = Math.max(today, Math.floor(history.latest.day));
  const line = titrantLine(history, now);
  if (isProblem(line)) {
    const more = fewestStrengths - checks.length;
    const sentence =
      more > 0
        ? `${counted(more, "more check")} of ${titrant} ${more === 1 ? "makes" : "make"} a line.`
        : say(line);
    return { kind: "too few", ...shown, title, leftOut, sentence };
  }
  const onDay = checks.map(({ day }) => titrantLine(history, Math.floor(day)));
  const at = (how: (found: TitrantLine) => number): number[] =>
    onDay.map((found) => (isProblem(found) ? Number.NaN : how(found)));
  const half = ({ strength, percent }: TitrantLine): number => (strength * percent) / 100;
  return {
    kind: "series",
    ...shown,
    across: "days",
    summary: "strength",
    called: "Bottle",
    title,
    source,
    places: 5,
    leftOut,
    isOdd: line.isOld,
    points: checks.map(({ day, strength }) => ({
      day: Math.floor(day),
      value: strength,
      of: titrant,
      said: "",
      isOut: false,
    })),
    lines: [
      { name: "Upper band", values: at((found) => found.strength + half(found)) },
      { name: "Line", values: at(({ strength }) => strength) },
      { name: "Lower band", values: at((found) => found.strength - half(found)) },
    ],
    sentence: `${lineWords(line)} ${todayWords(line)}`,
  };
}
