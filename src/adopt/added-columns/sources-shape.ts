/** What the formulas of a logbook's new columns are made of. */
import type { Base } from "../../core/reference/bases";
import type { Basis } from "../recognising/basis";
import type { AmountParts } from "./amount-parts";
import type { BlankPart } from "./blank-part";
import type { MassParts } from "./mass-parts";
import type { Part } from "./part";

export interface Sources extends AmountParts, MassParts {
  readonly titres: Part | undefined;
  /** What is lacking where there are none. */
  readonly titresLack: string;
  readonly blank: BlankPart;
  /** mol/L */
  readonly molarity: Part | undefined;
  /** g/L, where that is what is known; then `titrantBase` as well. */
  readonly strength: Part | undefined;
  readonly strengthBasis: Basis | undefined;
  readonly titrantBase: Part | undefined;
  readonly sampleVolume: Part | undefined;
  /** Density or name; undefined: not named. */
  readonly oil: Part | undefined;
  readonly base: Part | undefined;
  /** The one base of all rows, where there is but one. */
  readonly onlyBase: Base | undefined;
  readonly onlyTitrantBase: Base | undefined;
  /** % */
  readonly assay: Part | undefined;
  readonly charge:
    | { readonly part: Part; readonly per: "%" | "g/L" | "g/kg"; readonly basis: Basis | undefined }
    | undefined;
  readonly titreStep: Part | undefined;
  readonly massStep: Part | undefined;
  readonly titrantDoubt: Part | undefined;
  /** What the row holds as its acid value or % FFA, where it has no titres. */
  readonly heldAcidValue: Part | undefined;
  readonly heldFfa: Part | undefined;
  /** The cell itself: empty where nothing is held, which a hundred times it is not. */
  readonly heldFfaCell: Part | undefined;
  /** Words stand among the titres: a plain average would pass them over. */
  readonly hasWordsInTitres: boolean;
}
