/** From a mapping and its sheet to a reader of rows; what is the same for all rows is looked up once. */
import { quantity } from "../../../core/quantity/quantity";
import { type AmountUnit, amountUnits } from "../../../core/quantity/units";
import { limits } from "../../../core/reference/limits";
import { type Oil, oilNamed, oilNotNamed, oilOfDensity } from "../../../core/reference/oils";
import { amountMeant } from "../../recognising/answers";
import { columnOf, columnsOf, type LogbookMapping } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import type { SheetCells } from "../../recognising/sheet-cells";
import { dateHabit } from "../../recognising/date-habit";
import { dateFrom } from "../../recognising/typed-date";
import { withDittosRead } from "../../recognising/ditto";
import { isNeutralised } from "../../recognising/neutralised";
import { doseRoles, heldRoles } from "./figure-roles";
import { unreadReader } from "./unread";
import { massReader } from "./read-masses";
import { amountReader } from "./read-amounts";
import { type BlanksRead, blanksReader } from "./read-blanks";
import { lyeReader } from "./read-lye";
import type { Readings } from "./readings";
import { roleCells } from "./role-cells";

export type RowReader = (row: number) => Readings;

const kilogram = amountUnits.find(({ name }) => name === "kg") as AmountUnit;

/** A letter in it is a cell, a name or a function. */
const readsCells = /[A-Za-z[]/;

/** @param assay what another table says of the lye, for titrations that do not say it */
export function rowReader(mapping: LogbookMapping, given: SheetCells, assay?: number): RowReader {
  const cells = withDittosRead(given, mapping.place);
  const unread = unreadReader(mapping, cells);
  const byRole = roleCells(mapping, cells);
  const { at, figureAt, valueAt, textAt, listAt } = byRole;
  const lyeAt = lyeReader(mapping, byRole);
  const amountIn = at("oilAmount");
  const amountAt = amountReader(
    mapping,
    amountIn.cell,
    textAt("amountUnit"),
    amountMeant(amountIn.unit, amountIn.times),
  );
  const titreColumns = columnsOf(mapping, "titre");
  const titres = listAt(titreColumns);
  const blankColumns = columnsOf(mapping, "blank");
  const blankConstant = valueAt("blank");
  const blankText = textAt("blank");
  const blankList = listAt(blankColumns);
  const masses = massReader(mapping, listAt, titreColumns);
  const massConstant =
    columnsOf(mapping, "sampleMass").length === 0 ? valueAt("sampleMass") : () => undefined;
  const text = { lot: textAt("lot"), batch: textAt("batch"), oil: textAt("oil") };
  const value = {
    volume: valueAt("sampleVolume"),
    density: valueAt("density"),
    temperature: valueAt("temperature"),
    mass: valueAt("oilMass"),
    mean: valueAt("meanTitre"),
    net: valueAt("correctedTitre"),
  };
  const date = at("date");
  const held = heldRoles.flatMap((role) => {
    const column = columnOf(mapping, role);
    return column ? [[role, figureAt(role)] as const] : [];
  });
  const readers = new Map(held);
  const isDosedByLitre = doseRoles.some((role) => columnOf(mapping, role)?.unit === "g/L");

  /** For a typed figure alone, worked into a unit or not: a formula that reads cells has worked it out. */
  const above = (row: number, role: RoleId): number | undefined => {
    const read = readers.get(role);
    if (!read || row === mapping.place.firstRow) return undefined;
    const formula = read(row)?.formula ?? "";
    return readsCells.test(formula) ? undefined : read(row - 1)?.value;
  };

  const { order } = dateHabit(mapping, cells);
  const dateAt = (row: number): number | undefined => {
    const cell = date.cell(row);
    return cell && dateFrom(cell.value, cell.format, order);
  };
  const inColumns = blanksReader(mapping, cells, blankColumns, blankList, dateAt);
  function blanksOf(row: number): BlanksRead {
    if (blankColumns.length > 0) return inColumns(row);
    const constant = blankConstant(row);
    if (constant) return { blanks: [constant], why: "" };
    return isNeutralised(blankText(row))
      ? { blanks: [], why: "" }
      : { blanks: undefined, why: "what the blank took is not said" };
  }

  /** Of a named oil the density is what books say; a maker may well have used a rounder one. */
  function oilOf(row: number): { oil: Oil; isDensityStated: boolean } {
    const density = value.density(row);
    const allowed =
      density &&
      density >= Number(limits.oilDensity.from) &&
      density <= Number(limits.oilDensity.to);
    if (allowed) return { oil: oilOfDensity(quantity("kg/L", density)), isDensityStated: true };
    return { oil: oilNamed(text.oil(row)) ?? oilNotNamed, isDensityStated: false };
  }

  /** Where the single titres are not written down, their mean is the reading, or what is left of it. */
  function readTitres(
    row: number,
  ): BlanksRead & { list: readonly (number | undefined)[]; read?: RoleId } {
    const list = titres(row);
    if (list.some((each) => each !== undefined)) return { list, ...blanksOf(row) };
    const mean = value.mean(row);
    if (mean !== undefined) return { list: [mean], ...blanksOf(row), read: "meanTitre" };
    const net = value.net(row);
    if (net !== undefined) return { list: [net], blanks: [], why: "", read: "correctedTitre" };
    return { list, ...blanksOf(row) };
  }

  return (row) => {
    const { list, blanks, why, read: readRole } = readTitres(row);
    const isTitrated = list.some((each) => each !== undefined);
    const { amount, unread: ofAmount } = amountAt(row);
    const lye = lyeAt(row, isTitrated ? assay : undefined);
    const more = [
      ...ofAmount,
      ...(isTitrated && why !== "" ? [{ why, hides: "row" as const }] : []),
      ...lye.unread.filter(({ hides }) => isTitrated || hides !== "row"),
    ];
    const lot = text.lot(row);
    const own = masses(row);
    const all = massConstant(row);
    const kilograms = amount === undefined ? value.mass(row) : undefined;
    return {
      row,
      lot,
      label: [text.batch(row), lot].filter((each) => each !== "").join(", "),
      day: dateAt(row),
      titres: list,
      blanks,
      masses: all ? list.map(() => all) : own,
      volume: value.volume(row),
      ...oilOf(row),
      isDosedByLitre,
      temperature: value.temperature(row),
      amount: amount ?? (kilograms ? { value: kilograms, unit: kilogram } : undefined),
      ...lye.readings,
      unread: unread(row, more),
      above: (role) => above(row, role),
      held: new Map(
        held.flatMap(([role, read]) => {
          const figure = role === readRole ? undefined : read(row);
          return figure ? [[role, figure] as const] : [];
        }),
      ),
    };
  };
}
