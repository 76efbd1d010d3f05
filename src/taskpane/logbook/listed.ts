/** A re-check in words: its summary, each of its findings, and what else is to be known. */
import { counted as many } from "../../sheet/counted";
import { andList } from "../../sheet/and-list";
import { mostTries } from "../../adopt/recheck/judging/explained-twice";
import type { Finding, Kind, RecheckReport } from "../../adopt/recheck/reporting/finding";

const withUnit = (figure: string, unit: string): string =>
  unit === "" || unit === "fraction" ? figure : `${figure} ${unit}`;

const decimalsIn = (figure: string): number => figure.split(".")[1]?.length ?? 0;

/** Nobody types more: such a figure stands as it was typed. */
const typedDecimals = 4;

/** A figure worked out in the sheet has up to fifteen digits: two more decimals than it should have tell enough. */
const noLongerThan = (held: string, should: string): string => {
  const most = Math.max(typedDecimals, decimalsIn(should) + 2);
  return decimalsIn(held) > most && !Number.isNaN(Number(held))
    ? String(Number(Number(held).toFixed(most)))
    : held;
};

export const heldWords = ({ held, should }: Finding): string => noLongerThan(held, should);

export const figureWords = ({ held, should, unit }: Finding): string =>
  `holds ${withUnit(noLongerThan(held, should), unit)}, should be ${withUnit(should, unit)}`;

const kindWords: Readonly<Record<Kind, string>> = {
  titre: "titre",
  "acid value": "acid value",
  "% FFA": "figure",
  "mass of oil": "figure",
  "lye for the acid": "figure",
  "lye for the reaction": "figure",
  dose: "dose",
};
const kindEnds: Readonly<Partial<Record<Kind, string>>> = {
  "% FFA": " in % FFA",
  "mass of oil": " of the oil's mass",
  "lye for the acid": " of the lye for the acid",
  "lye for the reaction": " of the lye for the reaction",
};

/** "7 acid values, 7 figures in % FFA and 7 doses" */
const checkedWords = ({ checked }: RecheckReport): string =>
  andList(
    (Object.keys(checked) as Kind[]).flatMap((kind) =>
      checked[kind] === 0 ? [] : [`${many(checked[kind], kindWords[kind])}${kindEnds[kind] ?? ""}`],
    ),
  );

/** What was checked, by kind, and whether it is as it should be: nothing that was not checked is called right. */
export function summaryWords(report: RecheckReport): string {
  const { rows, figures, findings, unchecked, isAcross } = report;
  const one = isAcross ? "lot" : "row";
  if (figures === 0) return "No figure could be checked.";
  const checked = `Checked in ${many(rows, one)}: ${checkedWords(report)}`;
  if (findings.length === 0)
    return `${checked}. ${figures === 1 ? "It is" : "These are"} as ${figures === 1 ? "it" : "they"} should be, within the digits shown.`;
  const wrongRows = new Set(
    findings.map(({ sheet, row, column }) => `${sheet} ${String(isAcross ? column : row)}`),
  ).size;
  const right = rows - wrongRows;
  const others =
    right > 0
      ? ` In the other ${right === 1 ? one : many(right, one)} nothing wrong was found${unchecked.length === 0 ? "" : " in what was checked"}.`
      : "";
  return `${checked}. Not as ${findings.length === 1 ? "it" : "they"} should be: ${many(findings.length, "figure")}, in ${many(wrongRows, one)}.${others}`;
}

/** What else is to be known of a re-check: no dose in it, what was taken, where the search ended. */
export function remarksOn({ noDose, taken, cutShort }: RecheckReport): {
  readonly noDose: string;
  readonly taken: string;
  readonly cutShort: string;
} {
  return {
    noDose: noDose === "" ? "" : `No dose was checked: ${noDose}.`,
    taken: taken.length === 0 ? "" : `Assumed for this check: ${andList(taken)}.`,
    cutShort:
      cutShort === 0
        ? ""
        : `In ${many(cutShort, "figure")} the search for two mistakes at once ended after ${String(mostTries)} ways: there the cause may be known and not named.`,
  };
}

/** Everything that the logbook holds was checked, and nothing wrong was found. */
export const isAllRight = ({
  figures,
  findings,
  unchecked,
  aboveLimit,
  methanol,
  noDose,
}: RecheckReport): boolean =>
  figures > 0 &&
  findings.length === 0 &&
  unchecked.length === 0 &&
  aboveLimit.length === 0 &&
  methanol.every(({ odd }) => odd.length === 0) &&
  noDose === "";
