/** What one row was worked out from: readings and given figures, not results. */
import type { Basis } from "../../recognising/basis";
import type { AmountUnit } from "../../../core/quantity/units";
import type { Base } from "../../../core/reference/bases";
import type { Oil } from "../../../core/reference/oils";
import type { RoleId } from "../../recognising/roles";
import type { HeldFigure } from "./held-figure";
import type { Unread } from "./unread";

/** A base charge with what it is a share of. */
export interface Charge {
  readonly value: number;
  readonly per: "%" | "g/L" | "g/kg";
  /** Of pure base or of the lye as it comes; undefined: nobody said. */
  readonly basis: Basis | undefined;
}

export interface Readings {
  readonly row: number;
  /** Lot, batch or day, whatever names the row. */
  readonly label: string;
  readonly lot: string;
  readonly day: number | undefined;
  /** By titre column; undefined where nothing is filled in. */
  readonly titres: readonly (number | undefined)[];
  /** Undefined: no blank is filled in or known. Empty: neutralised. */
  readonly blanks: readonly number[] | undefined;
  /** mol/L */
  readonly molarity: number | undefined;
  /** g/L, as it is written */
  readonly strength: number | undefined;
  /** Of pure base or of the lye as it comes; undefined: nobody said. */
  readonly strengthBasis: Basis | undefined;
  /** % of pure base in those grams, as far as it is known. */
  readonly strengthAssay: number;
  /** g/L as it is written down, where that is not pure base. */
  readonly strengthGiven?: number;
  readonly titrantBase: Base | undefined;
  /** By titre column; one for all is repeated. g */
  readonly masses: readonly (number | undefined)[];
  /** mL, where the sample was taken by volume. */
  readonly volume: number | undefined;
  readonly oil: Oil;
  /** The oil as the sample's density has it, where that is another than the batch's. */
  readonly sampleOil?: Oil;
  /** The row or the sheet says which density or which oil. */
  readonly isDensityStated?: boolean;
  /** A dose is written down for a litre. */
  readonly isDosedByLitre?: boolean;
  readonly temperature: number | undefined;
  readonly amount: { readonly value: number; readonly unit: AmountUnit } | undefined;
  readonly base: Base | undefined;
  /** % */
  readonly assay: number | undefined;
  /** The lye for the acid is by a published coefficient, which is not quite a mole of base for each of acid. */
  readonly byCoefficient?: true;
  /** One lye in burette and vessel, whose assay is not known: it cancels in the dose, and 100 stands for it. */
  readonly assayCancels: boolean;
  readonly charge: Charge | undefined;
  /** Cells that hold something else than a figure: what rests on them is not checked. */
  readonly unread: readonly Unread[];
  /** Results that the row holds, by role. */
  readonly held: ReadonlyMap<RoleId, HeldFigure>;
  /** What stands right above them, in the same scale, where both were typed. */
  readonly above: (role: RoleId) => number | undefined;
  /** The lot's titration in another table, when this row has no titres of its own. */
  readonly ofLot?: OfLot;
}

export interface OfLot {
  /** Which of the titrations that are known. */
  readonly at: number;
  /** As it should be. */
  readonly acidValue: number | undefined;
  /** As it should be with each answer to what nobody said of the lye; empty where no question is open. */
  readonly acidValues: readonly number[];
  /** As the other table holds it. */
  readonly heldAcidValue: number | undefined;
  readonly heldFfa: number | undefined;
  /** How unsure their digits make them, as shares of themselves. */
  readonly doubts: { readonly acidValue: number; readonly ffa: number };
  /** What the table holds for the lots titrated just before and after it. */
  readonly otherAcidValues: readonly number[];
  readonly otherFfas: readonly number[];
}
