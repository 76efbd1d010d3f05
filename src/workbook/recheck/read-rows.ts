/** From a mapping and its sheet to a reader of rows; what is the same for all rows is looked up once. */
import { quantity } from "../../core/quantity/quantity";
import { type AmountUnit, amountUnits } from "../../core/quantity/units";
import type { Base } from "../../core/reference/bases";
import { limits } from "../../core/reference/limits";
import { type Oil, oilNamed, oilNotNamed, oilOfDensity } from "../../core/reference/oils";
import { columnOf, columnsOf, type LogbookMapping } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { heldCell, type SheetCells } from "../recognising/sheet-cells";
import { dateFrom } from "../recognising/typed-date";
import { withDittosRead } from "../recognising/ditto";
import { isNeutralised, unreadReader } from "./unread";
import { massReader } from "./read-masses";
import type { Charge, Readings } from "./readings";
import { roleCells } from "./role-cells";
import { amountUnitOf, baseWritten, soleBase, unitWritten } from "../recognising/written-units";

export type RowReader = (row: number) => Readings;

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

export function rowReader(mapping: LogbookMapping, given: SheetCells): RowReader {
  const cells = withDittosRead(given, mapping.place);
  const unread = unreadReader(mapping, cells);
  const { at, figureAt, valueAt, textAt, listAt } = roleCells(mapping, cells);
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
      return constant ? [constant] : isNeutralised(blankText(row)) ? [] : undefined;
    }
    const filled = blankList(row).filter((each) => each !== undefined);
    if (filled.length > 0) return filled;
    // A typed 0 and the word both say that the solvent took nothing.
    const words = blankColumns.map(({ column }) => heldCell(cells, row, column).value);
    return words.some((each) => each === 0 || (typeof each === "string" && isNeutralised(each)))
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
    const unit = unitWritten(text.unit(row)) ?? amountUnitOf(amountIn);
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
      unread: unread(row),
      held: new Map(
        held.flatMap(([role, read]) => {
          const figure = read(row);
          return figure ? [[role, figure] as const] : [];
        }),
      ),
    };
  };
}
