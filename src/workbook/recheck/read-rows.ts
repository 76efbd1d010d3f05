/** From a mapping and its sheet to a reader of rows; what is the same for all rows is looked up once. */
import { quantity } from "../../core/quantity/quantity";
import { type AmountUnit, amountUnitNamed, amountUnits } from "../../core/quantity/units";
import { type Base, baseNamed } from "../../core/reference/bases";
import { limits } from "../../core/reference/limits";
import { type Oil, oilNamed, oilNotNamed, oilOfDensity } from "../../core/reference/oils";
import { headingParts } from "../recognising/heading";
import {
  columnOf,
  columnsOf,
  type LogbookMapping,
  type MappedColumn,
} from "../recognising/mapping";
import { type RoleId, roles } from "../recognising/roles";
import { heldCell, type HeldCell, type SheetCells } from "../recognising/sheet-cells";
import { dateFrom } from "../recognising/typed-date";
import { decimalsOfColumn, type HeldFigure, heldFigure } from "./held-figure";
import type { Charge, Readings } from "./readings";

type At = (row: number) => HeldCell | undefined;

export type RowReader = (row: number) => Readings;

const unitNames: Readonly<Record<string, string>> = {
  L: "l",
  mL: "ml",
  "US gal": "us_gal",
  "imp gal": "uk_gal",
  kg: "kg",
  g: "g",
  lb: "lb",
};

const amountUnit = (unit: string | undefined): AmountUnit | undefined =>
  amountUnits.find(({ name }) => name === unitNames[unit ?? ""]);

/** A unit as people write it beside a figure: "litres", "US gal", "imp. gallons". */
function unitWritten(text: string): AmountUnit | undefined {
  return amountUnitNamed(text) ?? amountUnit(headingParts(text).unit);
}

/** "potash", "KOH flakes 90%": the base that the words name first. */
export function baseWritten(text: string): Base | undefined {
  const exactly = baseNamed(text);
  if (exactly) return exactly;
  const words = text.toLowerCase();
  if (/koch3|potassium meth/.test(words)) return baseNamed("KOCH3");
  if (/naoch3|sodium meth/.test(words)) return baseNamed("NaOCH3");
  if (/\bkoh\b|potash|potassium/.test(words)) return baseNamed("KOH");
  return /\bnaoh\b|soda|sodium/.test(words) ? baseNamed("NaOH") : undefined;
}

const resultRoles: readonly RoleId[] = [
  "meanTitre",
  "correctedTitre",
  "acidValue",
  "ffa",
  "oilMass",
  "acidDose",
  "reactionDose",
  "catalyst",
  "catalystRate",
  "weighed",
];

const textOf = (cell: HeldCell | undefined): string =>
  cell === undefined || typeof cell.value === "object" ? "" : String(cell.value).trim();

export function rowReader(mapping: LogbookMapping, cells: SheetCells): RowReader {
  const { commaIsDecimal } = mapping;
  /** The cell that says a role in a row: the column's, or the one for all rows. */
  const at = (role: RoleId): { cell: At; unit: string | undefined; column: number } => {
    const column = columnOf(mapping, role);
    if (column)
      return {
        cell: (row) => heldCell(cells, row, column.column),
        unit: column.unit,
        column: column.column,
      };
    const constant = mapping.constants.find((each) => each.role === role);
    if (!constant) return { cell: () => undefined, unit: undefined, column: -1 };
    const { from, unit } = constant;
    const held: HeldCell =
      from.kind === "cell"
        ? heldCell(cells, from.row, from.column)
        : { value: from.value, formula: "", format: "General" };
    return { cell: () => held, unit, column: -1 };
  };
  const { firstRow, lastRow } = mapping.place;
  const decimalsOf = (cell: At): number => {
    const rows = Array.from({ length: Math.min(400, lastRow - firstRow + 1) }, (_, each) =>
      cell(firstRow + each),
    );
    return decimalsOfColumn(
      rows.filter((each) => each !== undefined),
      commaIsDecimal,
    );
  };
  const figureAt = (role: RoleId) => {
    const { cell, unit, column } = at(role);
    const decimals = column < 0 ? 0 : decimalsOf(cell);
    return (row: number): HeldFigure | undefined => {
      const held = cell(row);
      return held && heldFigure(held, role, column, unit, commaIsDecimal, decimals);
    };
  };
  const valueAt = (role: RoleId) => {
    const figure = figureAt(role);
    return (row: number): number | undefined => figure(row)?.value;
  };
  const textAt = (role: RoleId) => {
    const { cell } = at(role);
    return (row: number): string => textOf(cell(row));
  };
  const listAt =
    (columns: readonly MappedColumn[], role: RoleId) =>
    (row: number): (number | undefined)[] =>
      columns.map(
        ({ column, unit }) =>
          heldFigure(heldCell(cells, row, column), role, column, unit, commaIsDecimal)?.value,
      );

  const titreColumns = columnsOf(mapping, "titre");
  const titres = listAt(titreColumns, "titre");
  const blankColumns = columnsOf(mapping, "blank");
  const blankConstant = valueAt("blank");
  const blankText = textAt("blank");
  const blankList = listAt(blankColumns, "blank");
  const masses = massReader(mapping, listAt, titreColumns);
  const massConstant =
    columnsOf(mapping, "sampleMass").length === 0 ? valueAt("sampleMass") : () => undefined;
  const text = {
    lot: textAt("lot"),
    batch: textAt("batch"),
    titrantBase: textAt("titrantBase"),
    base: textAt("base"),
    unit: textAt("amountUnit"),
    oil: textAt("oil"),
  };
  const value = {
    molarity: valueAt("molarity"),
    strength: valueAt("strength"),
    volume: valueAt("sampleVolume"),
    density: valueAt("density"),
    temperature: valueAt("temperature"),
    amount: valueAt("oilAmount"),
    assay: valueAt("assay"),
    charge: valueAt("baseCharge"),
    mass: valueAt("oilMass"),
  };
  const strengthIsPercent = at("strength").unit === "% w/v";
  const amountIn = at("oilAmount").unit;
  const chargePer = (at("baseCharge").unit ?? "%") as Charge["per"];
  const date = at("date");
  const held = resultRoles.flatMap((role) => {
    const column = columnOf(mapping, role);
    return column ? [[role, figureAt(role)] as const] : [];
  });
  const bases = new Map<string, Base | undefined>();
  const base = (written: string): Base | undefined => {
    if (!bases.has(written)) bases.set(written, baseWritten(written));
    return bases.get(written);
  };
  const baseInHeadings = soleBase(mapping);

  function blanksOf(row: number): readonly number[] | undefined {
    if (blankColumns.length === 0) {
      const constant = blankConstant(row);
      return constant ? [constant] : /^neutrali[sz]ed$/i.test(blankText(row)) ? [] : undefined;
    }
    const filled = blankList(row).filter((each) => each !== undefined);
    if (filled.length > 0) return filled;
    // A typed 0 and the word both say that the solvent took nothing.
    const words = blankColumns.map(({ column }) => heldCell(cells, row, column).value);
    return words.some(
      (each) =>
        each === 0 ||
        (typeof each === "string" && /^(?:0([.,]0+)?|neutrali[sz]ed)$/i.test(each.trim())),
    )
      ? []
      : undefined;
  }

  function oilOf(row: number): Oil {
    const density = value.density(row);
    const allowed =
      density &&
      density >= Number(limits.oilDensity.from) &&
      density <= Number(limits.oilDensity.to);
    if (allowed) return oilOfDensity(quantity("kg/L", density));
    return oilNamed(text.oil(row)) ?? oilNotNamed;
  }

  return (row) => {
    const dateCell = date.cell(row);
    const list = titres(row);
    const strength = value.strength(row);
    const amount = value.amount(row);
    const unit = unitWritten(text.unit(row)) ?? amountUnit(amountIn);
    const charge = value.charge(row);
    const lot = text.lot(row);
    const own = masses(row);
    const all = massConstant(row);
    const kilograms = amount === undefined ? value.mass(row) : undefined;
    return {
      row,
      lot,
      label: [text.batch(row), lot].filter((each) => each !== "").join(", "),
      day: dateCell && dateFrom(dateCell.value, dateCell.format),
      titres: list,
      blanks: blanksOf(row),
      molarity: value.molarity(row),
      strength: strength && strengthIsPercent ? strength * 10 : strength,
      titrantBase: base(text.titrantBase(row)) ?? baseInHeadings.titrant,
      masses: all ? list.map(() => all) : own,
      volume: value.volume(row),
      oil: oilOf(row),
      temperature: value.temperature(row),
      amount:
        amount && unit
          ? { value: amount, unit }
          : kilograms
            ? {
                value: kilograms,
                unit: amountUnits.find(({ name }) => name === "kg") as AmountUnit,
              }
            : undefined,
      base: base(text.base(row)) ?? baseInHeadings.catalyst,
      assay: value.assay(row),
      charge: charge === undefined ? undefined : { value: charge, per: chargePer },
      held: new Map(
        held.flatMap(([role, read]) => {
          const figure = read(row);
          return figure ? [[role, figure] as const] : [];
        }),
      ),
    };
  };
}

type ListAt = (
  columns: readonly MappedColumn[],
  role: RoleId,
) => (row: number) => (number | undefined)[];

/** Masses of each titre's own sample where any is filled in, else the one for all. */
function massReader(mapping: LogbookMapping, listAt: ListAt, titres: readonly MappedColumn[]) {
  const columns = columnsOf(mapping, "sampleMass");
  const numbers = columns.map(({ heading }) => headingParts(heading).number);
  const forAll = listAt(
    columns.filter((_, at) => numbers[at] === undefined),
    "sampleMass",
  );
  const numbered = columns.filter((_, at) => numbers[at] !== undefined);
  const own = listAt(numbered, "sampleMass");
  return (row: number): (number | undefined)[] => {
    const each = own(row);
    if (each.some((mass) => mass !== undefined)) {
      return titres.map(({ heading }, at) => {
        const number = headingParts(heading).number ?? at + 1;
        return each[numbered.findIndex((column) => headingParts(column.heading).number === number)];
      });
    }
    const one = forAll(row)[0];
    return titres.length > 0 ? titres.map(() => one) : [one];
  };
}

/** A base that headings name: "ml KOH" is what the burette held, "KOH g" what was dosed. */
function soleBase(mapping: LogbookMapping): {
  titrant: Base | undefined;
  catalyst: Base | undefined;
} {
  const named = (wanted: readonly RoleId[]): Base | undefined => {
    const texts = [
      ...mapping.columns.filter(({ role }) => wanted.includes(role)).map(({ heading }) => heading),
      ...mapping.constants.flatMap(({ role, from }) =>
        wanted.includes(role) && from.kind === "cell" ? [from.label] : [],
      ),
    ];
    const found = new Set(texts.map(baseWritten).filter((each) => each !== undefined));
    return found.size === 1 ? [...found][0] : undefined;
  };
  return {
    titrant: named(["titrantBase", "titre", "strength", "molarity"]),
    catalyst: named([
      "base",
      "acidDose",
      "reactionDose",
      "catalyst",
      "catalystRate",
      "weighed",
      "assay",
    ]),
  };
}

export const isResultRole = (role: RoleId): boolean =>
  roles.some((each) => each.id === role && each.isResult);
