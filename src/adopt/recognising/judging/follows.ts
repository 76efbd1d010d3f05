/**
 * Arithmetic as the judge of a guess: does a column follow from the others as its role says? A mean from
 * the titres, an acid value from the net titre and the sample. What follows in most rows is what it seems.
 */
import type { TablePlace } from "../find-tables";
import { median } from "../numbers-of-column";
import type { RoleId } from "../roles";
import { heldCell, type SheetCells } from "../sheet-cells";
import { numberFrom, type Commas } from "../typed-number";

type Figures = readonly (number | undefined)[];
type Of = (role: RoleId) => readonly Figures[];

/** Rows looked at. */
const most = 60;
const leastRows = 3;
/** Rounding and the digits shown; a ratio that should be the same in each row. */
const near = 0.035;

export function figuresOf(
  cells: SheetCells,
  place: TablePlace,
  column: number,
  commas: Commas,
): Figures {
  const last = Math.min(place.lastRow, place.firstRow + most - 1);
  return Array.from({ length: Math.max(0, last - place.firstRow + 1) }, (_, at) => {
    const { value } = heldCell(cells, place.firstRow + at, column);
    return numberFrom(value, commas)?.value;
  });
}

/** In how many of the rows where both are filled in do they agree? Undefined where too few tell. */
function shareAlike(own: Figures, should: Figures, tolerance = near): number | undefined {
  let told = 0;
  let alike = 0;
  own.forEach((value, at) => {
    const right = should[at];
    if (value === undefined || right === undefined || right === 0) return;
    told += 1;
    if (Math.abs(value / right - 1) <= tolerance) alike += 1;
  });
  return told < leastRows ? undefined : alike / told;
}

/** In how many rows has it the ratio to another that it has in most? */
function shareInRatio(own: Figures, to: Figures): { share: number; ratio: number } | undefined {
  const ratios = own.flatMap((value, at) => {
    const other = to[at];
    return value !== undefined && other !== undefined && other > 0 && value > 0
      ? [value / other]
      : [];
  });
  const distinct = new Set(to.filter((each) => each !== undefined)).size;
  if (ratios.length < leastRows || distinct < leastRows) return undefined;
  const middle = median(ratios);
  const alike = ratios.filter((each) => Math.abs(each / middle - 1) <= near).length;
  return { share: alike / ratios.length, ratio: middle };
}

const eachRow = (count: number, of: (at: number) => number | undefined): Figures =>
  Array.from({ length: count }, (_, at) => of(at));

function meanOf(columns: readonly Figures[], count: number): Figures {
  return eachRow(count, (at) => {
    const filled = columns.flatMap((column) => column[at] ?? []);
    return filled.length === 0 ? undefined : filled.reduce((a, b) => a + b, 0) / filled.length;
  });
}

/** What is left of the titres, from whichever columns say it. */
function netOf(of: Of, count: number): Figures {
  const [net] = of("correctedTitre");
  if (net) return net;
  const [mean] = of("meanTitre");
  const read = of("titre").length > 0 ? meanOf(of("titre"), count) : (mean ?? []);
  const blank = meanOf(of("blank"), count);
  return eachRow(count, (at) => {
    const value = read[at];
    return value === undefined ? undefined : value - (blank[at] ?? 0);
  });
}

/** Acid for a gram or a millilitre of oil, as far as the table says it. */
function acidOf(of: Of, count: number): Figures {
  const net = netOf(of, count);
  const [sample] = [...of("sampleMass"), ...of("sampleVolume")];
  const [strength] = [...of("molarity"), ...of("strength")];
  return eachRow(count, (at) => {
    const value = net[at];
    return value === undefined ? undefined : (value * (strength?.[at] ?? 1)) / (sample?.[at] ?? 1);
  });
}

/**
 * How well a column's figures follow as a role's: 1 in all rows, 0 in none; undefined where the table
 * does not say what it would follow from.
 */
export function followsAs(role: RoleId, own: Figures, of: Of): number | undefined {
  const count = own.length;
  switch (role) {
    case "meanTitre":
      return of("titre").length < 2
        ? undefined
        : shareAlike(own, meanOf(of("titre"), count), 0.012);
    case "correctedTitre": {
      const [mean] = of("meanTitre");
      const read = of("titre").length > 0 ? meanOf(of("titre"), count) : (mean ?? []);
      const blank = meanOf(of("blank"), count);
      const net = eachRow(count, (at) => {
        const value = read[at];
        const zero = blank[at];
        return value === undefined || zero === undefined ? undefined : value - zero;
      });
      return shareAlike(own, net, 0.02);
    }
    case "acidValue":
    case "ffa": {
      if (of("titre").length + of("meanTitre").length + of("correctedTitre").length === 0)
        return undefined;
      return shareInRatio(own, acidOf(of, count))?.share;
    }
    case "catalyst": {
      const [acid] = of("acidDose");
      const [reaction] = of("reactionDose");
      if (!acid || !reaction) return undefined;
      return shareAlike(
        own,
        eachRow(count, (at) => (acid[at] ?? NaN) + (reaction[at] ?? NaN)),
        0.02,
      );
    }
    case "oilMass": {
      const [amount] = of("oilAmount");
      return amount && shareInRatio(own, amount)?.share;
    }
    default:
      return undefined;
  }
}
