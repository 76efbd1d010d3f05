/** How a figure may have been worked out: the right way where a hook is missing, another way where it is there. */
import type { AmountUnit } from "../../../core/quantity/units";
import type { Base } from "../../../core/reference/bases";
import type { FattyAcid } from "../../../core/reference/fatty-acids";
import type { Readings } from "../reading/readings";

export type Figure = number | undefined;

/** Where the working of a row can go another way. */
export interface Ways {
  /** The mean of the titres, gaps among them. */
  readonly mean?: (titres: readonly Figure[]) => Figure;
  /** A titre without its blank. */
  readonly lessBlank?: (titre: number, blank: number) => number;
  /** What is done to a net titre that the sheet holds. */
  readonly net?: (net: number, blank: number) => number;
  /** mol/L */
  readonly molarity?: (r: Readings) => Figure;
  /** kg/L of the sample, of the batch */
  readonly sampleDensity?: number;
  readonly oilDensity?: number;
  readonly unit?: (unit: AmountUnit) => AmountUnit;
  /** Each kilogram counts as a litre. */
  readonly kilogramsAsLitres?: boolean;
  readonly acid?: FattyAcid;
  /** What % FFA is multiplied by. */
  readonly ffaScale?: number;
  /** g of pure base for the acid, from % FFA and what the reaction takes. */
  readonly acidPart?: (ffa: () => Figure, reaction: () => Figure) => Figure;
  readonly otherBase?: Base;
  /** What the base for the reaction is multiplied by. */
  readonly chargeScale?: number;
  /** What pure base is multiplied by to be what is weighed. */
  readonly weighing?: (assay: number) => number;
  /** What is written down instead of the figure itself. */
  readonly result?: (right: number) => Figure;
  /** Right too: litres from the amount, though the kilograms are held as well. */
  readonly litresByAmount?: boolean;
}
