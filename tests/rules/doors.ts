/**
 * What other rooms may import of a room; the rest of it is nobody else's concern. A list to keep short,
 * and no file that hands everything on: that would carry a whole room into each bundle that needs one
 * thing of it. `core` and `sheet` are no rooms with a door: each of their files is there for everybody.
 */
type Files = Readonly<Record<string, string>>;

const files = (folders: Files): string[] =>
  Object.entries(folders).flatMap(([folder, names]) =>
    names.split(" ").map((name) => (name === "index" ? folder : `${folder}/${name}`)),
  );

const open: Readonly<Record<string, readonly string[]>> = {
  "src/functions": files({
    "src/functions": "answer arguments catalogue define metadata names twin",
    "src/functions/cells": "cell grid",
    // what several functions share with their plain-formula twins
    "src/functions/batch": "caution-rows what-if",
    "src/functions/replicates": "spread",
    "src/functions/uncertainty": "budget checks",
    "src/functions/uncertainty/checks": "check",
  }),
  "src/xlsx": files({
    "src/xlsx":
      "book-look cell-address charts file-chart good-name index kept-words limits new-heights",
    "src/xlsx/formulas": "shared",
  }),
  "src/partner": files({
    "src/partner/plain": "page plain-call plain-lines",
    "src/partner/sharing": "index version",
    "src/partner/sharing/workings": "workings-name",
  }),
  "src/adopt": files({
    "src/adopt/added-columns": "added columns-to-add sources titre-formulas",
    "src/adopt/recheck": "recheck",
    "src/adopt/recheck/judging": "explained-twice",
    "src/adopt/recheck/reading": "held-figure",
    "src/adopt/recheck/mistakes": "all mistake",
    "src/adopt/recheck/reporting":
      "above-limit caution cause-words finding methanol-seen unchecked",
    "src/adopt/recognising":
      "answers basis comma-habit guess-columns lacks mapping questions recognise remembered roles sheet-cells sure typed-limits date-habit find-tables typed-date typed-number written-units",
    "src/adopt/recognising/by-hand": "left-out",
    "src/adopt/recognising/measures": "measured units-of-roles",
  }),
  "src/workbook": files({
    "src/workbook/card": "amounts",
    "src/workbook/checking": "lines report run tried-cells",
    "src/workbook/explain": "argument equation explain meant-figure spreadsheet-error",
    "src/workbook/healing": "checks-again heal search wording",
    "src/workbook/over-time":
      "batch-series blank-series check-oil-series fuel-series day-words method scatter-series series strength-series titrant-history titrant-line",
    "src/workbook/own": "own-logbook",
    "src/workbook/planning":
      "carry-out fault-wording grown-rows plan plan-over-time plan-card plan-probe preview-text read-batches read-lots read-store read-titrants read-titrations snapshot what-it-reads",
    "src/workbook/planning/bench": "plan-bench read-bench read-lye-lots",
    "src/workbook/planning/logbook": "add-columns mend no-results recheck-report remember-columns",
    "src/workbook/planning/record":
      "read-fuels record-batch record-went record-fuel record-lye-lot record-titrant record-titration target-row",
    "src/workbook/planning/what-if": "plan-what-if what-if-place",
    "src/workbook/record":
      "batch-record fuel-record lye-lot-record titrant-record titration-record worth",
    "src/workbook/sample": "cells logbook start-sheet",
    "src/workbook/tables": "batch-cells bench went column fuel-cells named-by ours",
    "src/workbook/what-if": "doses format names one-formula question",
  }),
  "src/host/excel": files({
    "src/host": "excel",
    "src/host/excel": "checked-program surroundings showing",
  }),
  "src/host/workbench": files({
    "src/host": "workbench",
    "src/host/workbench": "file-facts one-change",
  }),
  "src/taskpane": files({
    "src/taskpane": "kept-here pane unexpected",
    "src/taskpane/drafts": "believed",
  }),
  "src/workbench": files({
    "src/workbench": "look",
    "src/workbench/engine": "cells node settled workbook-cells",
  }),
  "src/help": files({ "src/help": "readme site" }),
  "src/cli": [],
};

/** A copy is made of the parts of a file, with what reads and patches them. */
const alsoTo: Readonly<Record<string, readonly string[]>> = {
  "src/partner": files({
    "src/xlsx": "model problem read-back",
    "src/xlsx/formulas": "array-nature from-file",
    "src/xlsx/package": "content-types names package relationships web-extensions",
    "src/xlsx/patch":
      "calculation calculation-chain cell-xml dimension formula-text new-sheet plain-sheet sheet-cells wanted",
    "src/xlsx/read":
      "array-areas cells dynamic-arrays shared-strings sheet sheet-scan tables workbook-part",
    "src/xlsx/styles": "dresser",
    "src/xlsx/xml": "escape scan tag tree",
  }),
};

/** The house a file is in: the room it opens to the others. */
export const houseOf = (path: string): string => {
  const [, room = "", within = ""] = path.split("/");
  return room === "host" ? `src/host/${within.replace(/\.tsx?$/, "")}` : `src/${room}`;
};

/** As an import names it. */
export const imported = (path: string): string => path.replace(/(\/index)?\.tsx?$/, "");

/** @param path, target files of src with their endings */
export function isThroughDoor(path: string, target: string): boolean {
  const doors = open[houseOf(target)];
  if (!doors || houseOf(path) === houseOf(target)) return true;
  const meant = imported(target);
  return [...doors, ...(alsoTo[houseOf(path)] ?? [])].includes(meant);
}

/** Every door, with the rooms it is for: all of them, or one. */
export const doors: readonly (readonly [file: string, to: string | undefined])[] = [
  ...Object.values(open).flatMap((paths) => paths.map((it) => [it, undefined] as const)),
  ...Object.entries(alsoTo).flatMap(([to, paths]) => paths.map((it) => [it, to] as const)),
];
