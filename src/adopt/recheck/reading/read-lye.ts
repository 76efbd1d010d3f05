/** The lye of a row, in the burette and in the vessel: which, how strong, how pure, how much of it. */
import { quoted } from "../../../core/problem/quoted";
import type { Base } from "../../../core/reference/bases";
import { assayCancels, type Basis, basisOf, mayBeOneLye } from "../../recognising/basis";
import type { LogbookMapping } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import { baseWritten, soleBase } from "../../recognising/written-units";
import type { Charge, Readings } from "./readings";
import type { roleCells } from "./role-cells";
import type { Hides, Unread } from "./unread";

type LyeReadings = Pick<
  Readings,
  | "molarity"
  | "strength"
  | "strengthBasis"
  | "strengthAssay"
  | "titrantBase"
  | "base"
  | "assay"
  | "assayCancels"
  | "charge"
>;
export interface Lye {
  readonly readings: LyeReadings;
  readonly unread: readonly Unread[];
}

/** Grams of a titrant's lye as weighed: how pure they are, where that is known or does not matter. */
function titrantAssay(
  basis: Basis | undefined,
  isSame: boolean,
  assay: number | undefined,
  charge: Charge | undefined,
): { assay: number; cancels: boolean } | undefined {
  if (basis !== "as weighed") return { assay: 100, cancels: false };
  if (!isSame) return undefined;
  if (assay !== undefined) return { assay, cancels: false };
  // no charge, and so no pure lye beside it
  const cancels = assayCancels(isSame, basis, charge ? charge.basis : "as weighed");
  return cancels ? { assay: 100, cancels: true } : undefined;
}

export function lyeReader(mapping: LogbookMapping, cells: ReturnType<typeof roleCells>) {
  const { at, valueAt, textAt } = cells;
  const words = { titrantBase: textAt("titrantBase"), base: textAt("base") };
  const value = {
    molarity: valueAt("molarity"),
    strength: valueAt("strength"),
    assay: valueAt("assay"),
    charge: valueAt("baseCharge"),
  };
  const isPerCent = at("strength").unit === "% w/v";
  const strengthBasis = basisOf(mapping, "strength");
  const chargeBasis = basisOf(mapping, "baseCharge");
  const { cell: chargeCell, unit: chargeUnit } = at("baseCharge");
  const inHeadings = soleBase(mapping);
  const known = new Map<string, Base | undefined>();
  const baseIn = (written: string, heading: Base | undefined): Base | undefined => {
    if (written === "") return heading;
    if (!known.has(written)) known.set(written, baseWritten(written));
    return known.get(written);
  };
  const chargeAt = (row: number): Charge | undefined => {
    const charge = value.charge(row);
    if (charge === undefined) return undefined;
    const cell = chargeCell(row);
    // A figure that the cell shows with a percent sign is one, whatever the heading says.
    const isPercent = typeof cell?.value === "number" && cell.format.includes("%");
    const per = isPercent ? "%" : ((chargeUnit ?? "%") as Charge["per"]);
    return { value: charge, per, basis: chargeBasis };
  };
  const notKnown = (role: RoleId, written: string, hides: Hides): Unread => ({
    why: `${quoted(written)} is no ${role === "base" ? "base" : "base in the burette"} that is known here`,
    hides,
  });
  return (row: number, elsewhere: number | undefined): Lye => {
    const unread: Unread[] = [];
    const titrantBase = baseIn(words.titrantBase(row), inHeadings.titrant);
    const base = baseIn(words.base(row), inHeadings.catalyst);
    const written = value.strength(row);
    const molarity = value.molarity(row);
    if (!titrantBase && words.titrantBase(row) !== "" && molarity === undefined)
      unread.push(notKnown("titrantBase", words.titrantBase(row), "row"));
    if (!base && words.base(row) !== "") unread.push(notKnown("base", words.base(row), "dose"));
    const charge = chargeAt(row);
    const assay = value.assay(row) ?? elsewhere;
    const isSame = mayBeOneLye(titrantBase, base);
    const pure =
      written === undefined || molarity !== undefined
        ? { assay: 100, cancels: false }
        : titrantAssay(strengthBasis, isSame, assay, charge);
    if (!pure) unread.push({ why: "the assay of the titrant's lye is not known", hides: "row" });
    return {
      readings: {
        molarity,
        strength: pure && written !== undefined && isPerCent ? written * 10 : pure && written,
        strengthBasis,
        strengthAssay: pure?.assay ?? 100,
        titrantBase,
        base,
        assay: pure?.cancels ? 100 : assay,
        assayCancels: pure?.cancels ?? false,
        charge,
      },
      unread,
    };
  };
}
