/** The readings taken, and the one being typed. */
import { exact } from "../../core/exact/exact";
import { type Gram, type Millilitre } from "../../core/quantity/quantity";
import type { Draft, Reading, ReadingList } from "./draft";
import { asInCell } from "../fields/number-figures";
import type { Figures } from "./figures";
import { numberFields, type NumberFieldId } from "./fields";
import { hasOwnMasses } from "./sample";

/** A titre that counts, with its number on the slip. */
export interface Standing {
  /** 1 for Titre 1. */
  readonly number: number;
  readonly titre: Millilitre;
  /** Its own mass, where each has one. */
  readonly mass: Gram | undefined;
}

export const usedOf = (reading: Reading): Millilitre => asInCell("mL", exact(reading.used));

/** The titres that are not omitted. */
export const standing = (draft: Draft): Standing[] =>
  draft.titres.flatMap((reading, index) =>
    reading.omitted === undefined
      ? [
          {
            number: index + 1,
            titre: usedOf(reading),
            mass:
              hasOwnMasses(draft) && reading.mass !== undefined
                ? asInCell("g", exact(reading.mass))
                : undefined,
          },
        ]
      : [],
  );

/** Blanks that count: none when the solvent was neutralised. */
export const standingBlanks = (draft: Draft): Millilitre[] =>
  draft.picked.blank === "titrated" ? draft.blanks.map(usedOf) : [];

export type Entry =
  | { readonly kind: "reading"; readonly reading: Reading }
  /** Still to be typed. */
  | { readonly kind: "waiting"; readonly field: NumberFieldId; readonly sentence: string }
  | { readonly kind: "wrong"; readonly field: NumberFieldId; readonly sentence: string };

/** Where a reading of each list is typed. */
export const entryNames = {
  titres: { used: "used", start: "start", end: "end" },
  blanks: { used: "blankUsed", start: "blankStart", end: "blankEnd" },
} as const satisfies Record<ReadingList, Record<string, NumberFieldId>>;

/** The fields one reading is typed in, in order. */
export const entryFields = (draft: Draft, list: ReadingList): NumberFieldId[] => [
  ...(draft.picked.reading === "used"
    ? [entryNames[list].used]
    : [entryNames[list].start, entryNames[list].end]),
  ...(list === "titres" && hasOwnMasses(draft) ? (["ownMass"] as const) : []),
];

/** So many are taken before Enter with nothing typed goes on: a press too many must not. */
const enough: Record<ReadingList, number> = { titres: 3, blanks: 1 };

/** All of the list is added and nothing more is typed: Enter then moves on. */
export const isListDone = (draft: Draft, list: ReadingList): boolean =>
  draft[list].length >= enough[list] &&
  entryFields(draft, list).every((field) => {
    const typed = draft.typed[field] ?? "";
    const isCarried = field === entryNames[list].start && typed === draft[list].at(-1)?.end;
    return typed === "" || isCarried;
  });

/** The reading in the entry fields, or what keeps it from being one. */
export function entryOf(draft: Draft, figures: Figures, list: ReadingList): Entry {
  const fields = entryFields(draft, list);
  const plain: Partial<Record<NumberFieldId, string>> = {};
  for (const field of fields) {
    const judged = figures.judged(field);
    if (judged.kind === "wrong") return { kind: "wrong", field, sentence: judged.sentence };
    if (judged.kind === "empty") {
      return { kind: "waiting", field, sentence: `Fill in ${numberFields[field].label}.` };
    }
    plain[field] = judged.plain;
  }
  const names = entryNames[list];
  const [used, start, end] = [plain[names.used], plain[names.start], plain[names.end]];
  const { ownMass } = plain;
  const mass = ownMass === undefined ? {} : { mass: ownMass };
  if (used !== undefined) return { kind: "reading", reading: { used, ...mass } };
  const from = exact(start ?? "0");
  const to = exact(end ?? "0");
  if (to.lte(from)) {
    return {
      kind: "wrong",
      field: names.end,
      sentence: `End is ${to.toString()} mL, not above the start of ${from.toString()} mL. On a syringe that counts down, type the volume used.`,
    };
  }
  const places = Math.max(from.decimalPlaces(), to.decimalPlaces());
  return {
    kind: "reading",
    reading: {
      used: to.minus(from).toFixed(Math.max(places, placesIn(start), placesIn(end))),
      ...(start === undefined ? {} : { start }),
      ...(end === undefined ? {} : { end }),
      ...mass,
    },
  };
}

/** Decimals as typed: "2.30" has two. */
export const placesIn = (plain: string | undefined): number => plain?.split(".")[1]?.length ?? 0;
