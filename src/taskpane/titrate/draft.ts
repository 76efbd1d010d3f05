/**
 * A titration under way, as it stands on the bench: what was typed, as it was typed, what was picked,
 * and the readings taken. A draft is plain data, so that it can be kept and taken up again.
 */
import type { Base } from "../../core/reference/bases";
import type { NumberFieldId } from "./fields";

export const stepIds = ["titrant", "oil", "blank", "replicates", "result", "record"] as const;
export type StepId = (typeof stepIds)[number];

/** How the strength of the titrant is known. */
export type StrengthWay =
  "molarity" | "normality" | "gramsPerLitre" | "percent" | "weighed" | "phthalate" | "certified";

export interface Picked {
  readonly base: Base["name"];
  readonly way: StrengthWay;
  /** The lye's assay, or: it is the batch's own lye and nobody knows. */
  readonly assay: "known" | "same-lye";
  /** The answer to "0.1 mol/L or 0.1 %?"; "" when not answered. */
  readonly oneTenth: "" | "molarity" | "percent";
  readonly stage: "as received" | "dried" | "after acid step" | "blend";
  /** An oil by name; "" for one that is not in the list. */
  readonly oil: string;
  readonly sample: "weighed" | "by volume";
  readonly masses: "one" | "own";
  readonly blank: "" | "titrated" | "neutralised";
  readonly reading: "used" | "start and end";
  readonly indicator: string;
  readonly seconds: "" | "15" | "30";
}

export interface Words {
  readonly lot: string;
  readonly operator: string;
  readonly note: string;
  /** Day the titrant was made or last checked, 2026-09-30. */
  readonly checkedOn: string;
}

/** A reading that was taken. Figures are plain digits with a point, exact as typed: "2.30". */
export interface Reading {
  readonly used: string;
  readonly start?: string;
  readonly end?: string;
  readonly mass?: string;
  /** Left out of the mean, and why. It keeps its number. */
  readonly omitted?: string;
}

export type ReadingList = "titres" | "blanks";
export const mostReadings: Record<ReadingList, number> = { titres: 6, blanks: 3 };

export interface Draft {
  readonly version: 1;
  readonly id: string;
  /** Day it was begun, 2026-09-30. */
  readonly begunOn: string;
  readonly step: StepId;
  readonly typed: Readonly<Partial<Record<NumberFieldId, string>>>;
  readonly picked: Picked;
  readonly words: Words;
  readonly titres: readonly Reading[];
  readonly blanks: readonly Reading[];
  /** It stands in the workbook. */
  readonly isRecorded: boolean;
}

const firstPicked: Picked = {
  base: "KOH",
  way: "molarity",
  assay: "known",
  oneTenth: "",
  stage: "as received",
  oil: "used cooking oil",
  sample: "weighed",
  masses: "one",
  blank: "",
  reading: "used",
  indicator: "phenolphthalein",
  seconds: "",
};

/** What stays the same from one titration to the next on the same bench. */
const keptTyped: readonly NumberFieldId[] = [
  "molarity",
  "normality",
  "gramsPerLitre",
  "percent",
  "lyeMass",
  "lyeVolume",
  "assay",
  "phthalateMass",
  "phthalateTitre",
  "phthalatePurity",
  "certified",
  "strengthPercent",
  "titreStep",
  "massStep",
  "samplePercent",
];

const keptPicks = [
  "base",
  "way",
  "assay",
  "oneTenth",
  "oil",
  "sample",
  "masses",
  "reading",
  "indicator",
];

const only = <T extends object>(from: T, keys: readonly string[]): Partial<T> =>
  Object.fromEntries(Object.entries(from).filter(([key]) => keys.includes(key))) as Partial<T>;

/**
 * A fresh titration. After another it keeps titrant, burette, balance and habits, never a reading.
 * @param id any text not used before
 * @param today 2026-09-30
 */
export const newDraft = (id: string, today: string, after?: Draft): Draft => ({
  version: 1,
  id,
  begunOn: today,
  step: "titrant",
  typed: after ? only(after.typed, keptTyped) : {},
  picked: { ...firstPicked, ...(after ? only(after.picked, keptPicks) : {}) },
  words: {
    lot: "",
    note: "",
    operator: after?.words.operator ?? "",
    checkedOn: after?.words.checkedOn ?? "",
  },
  titres: [],
  blanks: [],
  isRecorded: false,
});
