/** The fuels on record, a row each time one was looked at, as the table `Fuel` has them. Reads only. */
import { type CellContent, type Fault, type Host, isFault } from "../../../sheet/port";
import { notWashed } from "../../record/fuel-record";
import { fuelName } from "../../tables/fuel-cells";
import { rowsUnder, type Under } from "../headings";
import { valueText } from "../preview-text";
import { readTable } from "../read";

/** A figure of a fuel, and how the row judges it: "below", "cannot tell", "above"; "" where it does not. */
export interface FuelFigure {
  readonly value: number;
  readonly verdict: string;
}

export interface RecordedFuel {
  /** As it stands there, without the spaces around it. */
  readonly batch: string;
  /** As a spreadsheet counts days; undefined where it holds no date. */
  readonly day: number | undefined;
  readonly isUnwashed: boolean;
  /** mg KOH/g. */
  readonly acid: FuelFigure | undefined;
  /** mg/kg. */
  readonly soap: FuelFigure | undefined;
  /** mg/kg. */
  readonly metal: FuelFigure | undefined;
  /** % of the mass. */
  readonly water: FuelFigure | undefined;
}

const text = (value: CellContent): string =>
  typeof value === "object" ? "" : valueText(value).trim();

function figure(under: Under, heading: string, verdict = ""): FuelFigure | undefined {
  const value = under(heading);
  if (typeof value !== "number") return undefined;
  const [begins = ""] = verdict === "" ? [] : text(under(verdict)).split(":");
  return { value, verdict: begins };
}

/** @returns none where there is no such table */
export async function readFuels(host: Host): Promise<readonly RecordedFuel[] | Fault> {
  const found = await readTable(host, fuelName);
  if (found === undefined) return [];
  if (isFault(found)) return found;
  return rowsUnder(found.table.headings, found.values.slice(1)).flatMap((under) => {
    const batch = text(under("Batch"));
    const day = under("Date");
    if (batch === "") return [];
    return [
      {
        batch,
        day: typeof day === "number" ? day : undefined,
        isUnwashed: text(under("Washes")).toLowerCase() === notWashed,
        acid: figure(under, "Acid value mg KOH/g", "Acid verdict"),
        soap: figure(under, "Soap mg/kg"),
        metal: figure(under, "Metal mg/kg", "Metal verdict"),
        water: figure(under, "Water %"),
      },
    ];
  });
}
