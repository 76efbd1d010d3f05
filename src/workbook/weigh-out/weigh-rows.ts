/** What stands on the scale: oil by lot, methanol, lye. */
import { methanolDensity } from "../../core/reference/liquids";
import { oilMass as massOf } from "../../core/batch/oil-mass";
import { isProblem } from "../../core/problem/problem";
import { as } from "../../core/quantity/quantity";
import { amountUnitNamed } from "../../core/quantity/units";
import { baseNamed } from "../../core/reference/bases";
import { oilNamed, oilNotNamed } from "../../core/reference/oils";
import type { BookCell } from "../../sheet/book";
import { box, large, type Row, text, worked } from "./cells";
import { at, type Places } from "./places";
import type { WeighOutRecord } from "./weigh-out-record";

interface Formats {
  readonly kilograms: string;
  readonly grams: string;
}

/** Digits enough for a batch of this size, be it a vessel or a beaker. */
const bySize: readonly (readonly [atLeast: number, Formats])[] = [
  [10, { kilograms: "0.00", grams: "0.0" }],
  [0.1, { kilograms: "0.0000", grams: "0.000" }],
  [0, { kilograms: "0.0000000", grams: "0.000000" }],
];

function formatsFor({ batch, oil }: WeighOutRecord): Formats {
  const unit = amountUnitNamed(batch.unit);
  const at = batch.temperature && as("C", batch.temperature);
  const mass = unit && massOf(batch.amount, unit, oilNamed(oil) ?? oilNotNamed, at);
  const kilograms = !mass || isProblem(mass) ? 10 : mass.toNumber();
  const found = bySize.find(([atLeast]) => kilograms >= atLeast);
  return (found ?? (bySize[0] as (typeof bySize)[number]))[1];
}

const kilograms = (places: Places, unit: string): string =>
  `TITRE.OILMASS(${at(places.amount)},"${unit}",${at(places.oil)},${at(places.temperature)})`;

const grams = ({ mix, base, assay, charge, limit }: Places, oilMass: string): string =>
  `TITRE.CATALYST(${oilMass},${at(mix)},${at(base)},${at(assay)},${at(charge)},${at(limit)})`;

const methanol = ({ ratio, mix, oil }: Places, oilMass: string): string =>
  `TITRE.METHANOL(${oilMass},${at(ratio)},${at(mix)},${at(oil)})`;

/** A methoxide of assay under 50 % is a solution, and the rest of it is methanol. */
function brought({ batch }: WeighOutRecord, places: Places, lye: string): string {
  const isSolution = baseNamed(batch.base)?.isMethoxide === true && batch.assay.lt(50);
  return isSolution
    ? `-${lye}*(100-${at(places.assay)})/100/${methanolDensity.times(1000).toString()}`
    : "";
}

const pounds = (oilKilograms: string): string =>
  `INT(ROUND(${oilKilograms}/0.028349523125,1)/16)&" lb "&FIXED(MOD(ROUND(${oilKilograms}/0.028349523125,1),16),1,TRUE)&" oz"`;

/** The amounts, a box to tick before each. */
export function weighRows(record: WeighOutRecord, places: Places): Row[] {
  const { batch, lots, hasPounds } = record;
  const oilMass = kilograms(places, batch.unit);
  const formats = formatsFor(record);
  const lyeRow = places.weigh + lots.length + 1;
  const lye = `C${String(lyeRow)}`;
  const inPounds = (mass: string): BookCell | null =>
    hasPounds ? worked(`=${pounds(mass)}`) : null;
  const lotRows = lots.map(({ lot }, index): Row => {
    const share = lots.length === 1 ? "" : `*C${String(places.firstLot + index)}/100`;
    const own = `C${String(places.weigh + index)}`;
    return [
      box,
      { value: `Oil, lot ${String(lot)}`, style: "large" },
      large(`=${oilMass}${share}`, formats.kilograms),
      { value: "kg", style: "large" },
      inPounds(own),
    ];
  });
  const lyeName = [batch.base, batch.lyeLot === "" ? "" : `lot ${batch.lyeLot}`]
    .filter((word) => word !== "")
    .join(", ");
  return [
    ...lotRows,
    [
      box,
      {
        value: brought(record, places, lye) === "" ? "Methanol" : "Methanol to add",
        style: "large",
      },
      large(
        `=MAX(0,${methanol(places, oilMass)}${brought(record, places, lye)})`,
        formats.kilograms,
      ),
      { value: "L", style: "large" },
      text("at 20 °C"),
    ],
    [
      box,
      { value: lyeName, style: "large" },
      large(`=${grams(places, oilMass)}`, formats.grams),
      { value: "g", style: "large" },
      inPounds(`(${lye}/1000)`),
    ],
  ];
}
