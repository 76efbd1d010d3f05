/** Recording a titration: the row holds what was typed, and its results are right. */
import assert from "node:assert/strict";
import type { Block, CellContent } from "../../../src/sheet/port";
import {
  planTitration,
  recordTitration,
} from "../../../src/workbook/planning/record/record-titration";
import { recordOf } from "../../../src/taskpane/titrate/record";
import type { TitrationRecord } from "../../../src/workbook/record/titration-record";
import type { RowChoice } from "../../../src/workbook/planning/record/target-row";
import type { Reading } from "../../../src/taskpane/titrate/draft";
import { acidByHand, isNear } from "../by-hand";
import { acidOf, molarityOf, type Slip } from "../slip-model";
import type { World } from "../world";
import { lookAtResult } from "./at-the-bench";
import { carry, type Carried } from "./carried";
import { rowToCome } from "./row-to-come";

/** 30 September 2026: 126 years of 365 days, 31 leap days (29 February 1900 is one there), 272 days. */
const day = 46_295;

const isWhole = (slip: Slip): boolean | "who knows" => {
  const acid = acidOf(slip);
  if (acid === "missing" || acid === undefined || slip.lot.trim() === "") return false;
  return acid.isPlausible ? true : "who knows";
};

const numbered = (name: string, unit: string, readings: readonly Reading[]) =>
  readings.flatMap(({ used, omitted }, at): [string, CellContent][] =>
    omitted === undefined ? [[`${name} ${String(at + 1)} ${unit}`, Number(used)]] : [],
  );

const ownMasses = ({ titres }: Slip) =>
  titres.flatMap(({ mass, omitted }, at): [string, CellContent][] =>
    omitted === undefined && mass !== undefined
      ? [[`Own mass ${String(at + 1)} g`, Number(mass)]]
      : [],
  );

const number = (text: string | undefined): CellContent =>
  text === undefined || text === "" ? "" : Number(text.replace(",", "."));

/** Two decimals, as the burette is read. */
const omittedWords = ({ titres }: Slip): string =>
  titres
    .flatMap(({ used, omitted }, at) =>
      omitted === undefined
        ? []
        : [`Titre ${String(at + 1)} = ${Number(used).toFixed(2)} mL: ${omitted}`],
    )
    .join("; ");

/** What the row should hold, by heading. */
const wantedRow = (slip: Slip): Map<string, CellContent> => {
  const { typed, picked } = slip;
  const isOwn = picked.masses === "own";
  return new Map<string, CellContent>([
    ["Date", day],
    ["Lot", slip.lot.trim()],
    ["Stage", "as received"],
    ["Oil", "used cooking oil"],
    ["Titrant base", picked.base ?? ""],
    ["Molarity mol/L", molarityOf(slip) ?? ""],
    ...numbered("Titre", "mL", slip.titres),
    ...(picked.blank === "neutralised"
      ? ([["Blank 1 mL", "neutralised"]] as const)
      : numbered("Blank", "mL", slip.blanks)),
    ...(isOwn ? ownMasses(slip) : ([["Mass g", number(typed.mass)]] as const)),
    ["Read to mL", number(typed.titreStep)],
    ["Weighed to g", number(typed.massStep)],
    ["Titrant ± %", number(typed.strengthPercent)],
    ["Omitted", omittedWords(slip)],
    ["Note", slip.note.trim()],
  ]);
};

const isAs = (found: CellContent, wanted: CellContent): boolean =>
  typeof wanted === "number" ? isNear(found, wanted) || found === wanted : found === wanted;

/** Columns that the titration itself fills. */
const readings = /^(Titre|Blank|Own mass) \d|^(Mass g|Omitted|Note|Lot)$/;

async function checkRow(world: World, block: Block, slip: Slip): Promise<void> {
  const table = world.workbook.tableBlock("Titrations");
  if (!table) throw new Error("there is no table Titrations");
  const headings = world.workbook.headings(table);
  const cells = await world.workbook.cells(block);
  const wanted = wantedRow(slip);
  headings.forEach((heading, column) => {
    const [value, formula] = [cells.values[0]?.[column] ?? "", cells.formulas[0]?.[column] ?? ""];
    const should = wanted.get(heading) ?? (readings.test(heading) ? "" : undefined);
    if (should === undefined) return;
    if (formula !== "") throw new Error(`${heading} holds the formula ${formula}`);
    if (!isAs(value, should)) {
      throw new Error(`${heading} holds ${JSON.stringify(value)}, not ${JSON.stringify(should)}`);
    }
  });
  checkResults(headings, cells.values[0] ?? [], cells.formulas[0] ?? []);
}

/** The results of any row of readings, against the arithmetic by hand from the row itself. */
function checkResults(
  headings: readonly string[],
  values: readonly CellContent[],
  formulas: readonly string[],
): void {
  const at = (heading: string): CellContent => values[headings.indexOf(heading)] ?? "";
  const list = (name: string, unit: string, count: number): CellContent[] =>
    Array.from({ length: count }, (_, each) => at(`${name} ${String(each + 1)} ${unit}`));
  for (const value of values) {
    if (typeof value === "number") assert.equal(Number.isFinite(value), true);
  }
  const [titres, blanks] = [list("Titre", "mL", 6), list("Blank", "mL", 3)];
  const own = list("Own mass", "g", 6);
  const isOwn = own.some((each) => typeof each === "number");
  const isFigure = (each: CellContent): each is number => typeof each === "number" && each > 0;
  const isPlain = (each: CellContent): boolean => each === "" || (isFigure(each) && each <= 100);
  const [molarity, mass] = [at("Molarity mol/L"), at("Mass g")];
  const hasBlank =
    isFigure(blanks[0] ?? "") || blanks.some(isFigure) || blanks[0] === "neutralised";
  const isBlankPlain = blanks.every(isPlain) || blanks.join("") === "neutralised";
  if (!titres.every(isPlain) || !isBlankPlain || !hasBlank || !own.every(isPlain)) return;
  if (!isFigure(molarity) || molarity > 2) return;
  if (!isOwn && !(isFigure(mass) && mass >= 0.1 && mass <= 100)) return;
  const masses = titres.flatMap((titre, each) =>
    isFigure(titre) ? [isOwn ? own[each] : mass] : [],
  );
  if (
    masses.length === 0 ||
    !masses.every((each) => isFigure(each ?? "") && (each as number) >= 0.1)
  ) {
    return;
  }
  if (isOwn && own.some((each, place) => isFigure(each) && !isFigure(titres[place] ?? ""))) return;
  const acid = acidByHand({
    molarity,
    titres: titres.filter(isFigure),
    blanks: blanks.filter(isFigure),
    masses: masses as number[],
  });
  const [corrected, acidValue, ffa] = ["Corrected titre mL", "Acid value mg KOH/g", "FFA %"].map(
    (heading) => ({ heading, value: at(heading), formula: formulas[headings.indexOf(heading)] }),
  );
  for (const [cell, wanted] of [
    [corrected, acid?.corrected],
    [acidValue, acid?.acidValue],
    [ffa, acid?.ffa],
  ] as const) {
    if (!cell?.formula) continue;
    if (acid && !acid.isPlausible) continue;
    const isRight =
      wanted === undefined ? typeof cell.value === "object" : isNear(cell.value, wanted);
    if (!isRight) {
      throw new Error(
        `${cell.heading} shows ${JSON.stringify(cell.value)}, by hand ${String(wanted)}`,
      );
    }
  }
}

async function carryTitration(
  world: World,
  record: TitrationRecord,
  choice: RowChoice,
): Promise<Carried | undefined> {
  const { workbook } = world;
  return carry(world, {
    what: "titration",
    plan: () => planTitration(workbook.host, record, choice),
    write: (confirmed) => recordTitration(workbook.host, record, confirmed, undefined, choice),
  }).catch((problem: unknown) => {
    if (workbook.isSpoilt && String(problem).includes("refused")) return undefined;
    throw problem;
  });
}

/** As a person goes through it: where the row is not free, the next free one is asked for. */
async function recordSomewhere(
  world: World,
  record: TitrationRecord,
): Promise<{ carried: Carried | undefined; row: number | undefined }> {
  const { workbook } = world;
  const coming = rowToCome(world, "first");
  const carried = await carryTitration(world, record, "first");
  const isKnown = coming !== undefined && carried?.disturbance === "none" && carried.isClear;
  if (!isKnown || carried.outcome.kind !== "refused") return { carried, row: coming?.row };
  if (workbook.isSpoilt) return { carried, row: undefined };
  if (coming.isFree || carried.outcome.hasNextFree !== true) {
    throw new Error(`the titration was refused: ${carried.outcome.sentence}`);
  }
  const next = rowToCome(world, "next free");
  const again = await carryTitration(world, record, "next free");
  if (again?.outcome.kind === "refused" && again.disturbance === "none" && again.isClear) {
    throw new Error(`the next free row was refused: ${again.outcome.sentence}`);
  }
  return { carried: again, row: next?.row };
}

export async function recordTheTitration(world: World): Promise<Carried | undefined> {
  const view = lookAtResult(world);
  const { slip } = world.bench;
  const record = recordOf(view);
  const wanted = isWhole(slip);
  if (wanted !== "who knows") assert.equal(record !== undefined, wanted);
  if (!record) return undefined;
  const { workbook } = world;
  const text = JSON.stringify(slip);
  const { carried, row } = await recordSomewhere(world, record);
  assert.equal(JSON.stringify(world.bench.slip), text);
  if (carried?.outcome.kind !== "recorded") return carried;
  const { block } = carried.outcome.plan;
  if (row !== undefined && carried.isClear && block.row !== row) {
    throw new Error(`recorded in row ${String(block.row)}, not ${String(row)}`);
  }
  if (!workbook.isSpoilt) await checkRow(world, block, slip);
  await world.bench.act({ do: "recorded" }, (now) => {
    now.isRecorded = true;
  });
  // as a rule the next one follows
  if (world.chance.is(0.7)) await world.bench.next();
  return carried;
}

/** Any row of the logbook, looked at. */
export async function lookAtARow(world: World): Promise<void> {
  const { workbook, chance } = world;
  const block = workbook.tableBlock("Titrations");
  if (!block || workbook.isSpoilt) return;
  const row = block.row + chance.whole(1, block.rows - 1);
  const cells = await workbook.cells({ ...block, row, rows: 1 });
  checkResults(workbook.headings(block), cells.values[0] ?? [], cells.formulas[0] ?? []);
}
