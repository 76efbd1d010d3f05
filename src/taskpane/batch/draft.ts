/**
 * A batch under way: which lots, how much, what lye, as typed and picked. Plain data, so that it can be
 * kept and taken up again; the lots' acid values are not in it, since the workbook has them.
 */
import type { Base } from "../../core/reference/bases";
import { usual } from "../../core/reference/usual";
import type { UnitId } from "../fields/units";
import type { NumberFieldId } from "./fields";

export const stepIds = ["oil", "lye", "methanol", "weigh-out", "record"] as const;
export type StepId = (typeof stepIds)[number];

export interface Picked {
  readonly unit: UnitId;
  /** How lots are mixed: by shares one types, or to a target. */
  readonly mixedBy: "shares" | "target";
  readonly base: Base["name"];
  /** What the titrant of these lots was made of. */
  readonly titrantLye: "other" | "same";
  readonly chargeUnit: "%" | "g/L";
  /** Never taken for granted: "" until somebody says which. */
  readonly chargeIs: "" | "pure" | "as weighed";
  readonly methanolBy: "ratio" | "volume";
  /** Weights in pounds and ounces as well. */
  readonly pounds: "no" | "yes";
}

export interface Words {
  readonly batch: string;
  readonly lyeLot: string;
  readonly note: string;
}

export interface ChosenLot {
  /** The lot's mark as text; `Titrations` may hold it as a number. */
  readonly lot: string;
  /** Its share of the mass as typed, %; the last lot takes what the others leave. */
  readonly share: string;
}

export const mostLots = 4;

export interface Draft {
  readonly version: 1;
  readonly step: StepId;
  readonly lots: readonly ChosenLot[];
  readonly typed: Readonly<Partial<Record<NumberFieldId, string>>>;
  readonly picked: Picked;
  readonly words: Words;
  /** It stands in the workbook. */
  readonly isRecorded: boolean;
}

const firstPicked: Picked = {
  unit: "l",
  mixedBy: "shares",
  base: "KOH",
  titrantLye: "other",
  chargeUnit: "%",
  chargeIs: "",
  methanolBy: "ratio",
  pounds: "no",
};

/** Belongs to one batch alone. */
const ownFields: readonly NumberFieldId[] = ["temperature", "water", "target", "former"];

/** A fresh batch. After another it keeps the vessel and the lye, never the lots or the limit. */
export const newDraft = (after?: Draft): Draft => ({
  version: 1,
  step: "oil",
  lots: [],
  typed: after
    ? Object.fromEntries(
        Object.entries(after.typed).filter(
          ([field]) => field !== "limit" && !ownFields.includes(field as NumberFieldId),
        ),
      )
    : { ratio: usual.molarRatio.toString() },
  picked: after ? { ...after.picked, mixedBy: "shares", titrantLye: "other" } : firstPicked,
  words: { batch: "", lyeLot: after?.words.lyeLot ?? "", note: "" },
  isRecorded: false,
});
