/** How far a titration is: what each step still wants, and for what. */
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { daysBetween } from "../widgets/day";
import { contradictionIn } from "./contradiction";
import type { StepId } from "./titration";
import { numberFields, type NumberFieldId } from "./fields";
import type { Seen } from "./nudges/nudge";
import { hasOwnMasses, massByVolume } from "./sample";
import { isTenthAsked, needsAssay, strengthFields, strengthOutOfRange } from "./strength";
import { digits } from "../widgets/shown-number";

export interface Want {
  readonly step: StepId;
  readonly sentence: string;
  /** Without it there is no result; no ±; no row. */
  readonly for: "result" | "doubt" | "record";
}

/** A field that is empty though it may not be, or wrong. */
function wants(seen: Seen, step: StepId, field: NumberFieldId, what: Want["for"]): Want[] {
  const judged = seen.figures.judged(field);
  if (judged.kind === "wrong") return [{ step, sentence: judged.sentence, for: what }];
  const fact: { label: string; isOptional?: boolean } = numberFields[field];
  return judged.kind === "empty" && !fact.isOptional
    ? [{ step, sentence: `Fill in ${fact.label}.`, for: what }]
    : [];
}

function titrant(seen: Seen): Want[] {
  const { draft, figures, today } = seen;
  const { way, assay } = draft.picked;
  const step = "titrant";
  const days = daysBetween(draft.words.checkedOn, today);
  const outOfRange = strengthOutOfRange(draft, figures);
  return [
    ...strengthFields[way].flatMap((field) => wants(seen, step, field, "result")),
    ...(needsAssay(way) && assay === "known" ? wants(seen, step, "assay", "result") : []),
    ...(isTenthAsked(draft, figures)
      ? [{ step, sentence: "Which 0.1 is it: mol/L or percent?", for: "result" } as const]
      : []),
    ...(outOfRange
      ? [
          {
            step,
            sentence: `The strength comes to ${digits(outOfRange)} mol/L; up to 2 is allowed. Check mass and volume.`,
            for: "result",
          } as const,
        ]
      : []),
    ...wants(seen, step, "strengthPercent", "doubt"),
    ...wants(seen, step, "titreStep", "doubt"),
    ...wants(seen, step, "burettePercent", "doubt"),
    ...(days !== undefined && days < 0
      ? [{ step, sentence: "The day it was checked is in the future.", for: "record" } as const]
      : []),
  ];
}

function oil(seen: Seen): Want[] {
  const { draft, figures } = seen;
  const step = "oil";
  const lot: Want[] =
    draft.words.lot.trim() === "" ? [{ step, sentence: "Fill in Lot.", for: "record" }] : [];
  if (draft.picked.sample === "by volume") {
    const mass = massByVolume(draft, figures);
    return [
      ...lot,
      ...(["volume", "density", "temperature"] as const).flatMap((field) =>
        wants(seen, step, field, "result"),
      ),
      ...(isProblem(mass) ? [{ step, sentence: say(mass), for: "result" } as const] : []),
      ...wants(seen, step, "samplePercent", "doubt"),
    ];
  }
  return [
    ...lot,
    ...(hasOwnMasses(draft) ? [] : wants(seen, step, "mass", "result")),
    ...wants(seen, step, "massStep", "doubt"),
  ];
}

function blank({ draft }: Seen): Want[] {
  const step = "blank";
  if (draft.picked.blank === "") {
    return [
      { step, sentence: "Is the blank titrated, or is the solvent neutralised?", for: "result" },
    ];
  }
  return draft.picked.blank === "titrated" && draft.blanks.length === 0
    ? [{ step, sentence: "No blank yet.", for: "result" }]
    : [];
}

function replicates({ working }: Seen): Want[] {
  const step = "replicates";
  const { titres, acid } = working;
  if (titres.length === 0) return [{ step, sentence: "No titre yet.", for: "result" }];
  if (isProblem(acid)) return [{ step, sentence: contradictionIn(titres, acid), for: "result" }];
  return titres.length === 1
    ? [{ step, sentence: "One titre shows no scatter: take two or more.", for: "doubt" }]
    : [];
}

function massless({ draft, working }: Seen): Want[] {
  const lacking = working.titres.find(({ mass }) => hasOwnMasses(draft) && mass === undefined);
  return lacking
    ? [{ step: "replicates", sentence: `Titre ${lacking.number} has no mass.`, for: "result" }]
    : [];
}

/** Everything still wanted, in the order of the steps. */
export const wanted = (seen: Seen): Want[] => [
  ...titrant(seen),
  ...oil(seen),
  ...blank(seen),
  ...replicates(seen),
  ...massless(seen),
];

/** What keeps the row from being recorded. A missing ± does not. */
export const keepsFromRecording = (wants: readonly Want[]): Want[] =>
  wants.filter((want) => want.for !== "doubt");

export type StepState = "done" | "to do" | "part done";

export function stateOf(step: StepId, seen: Seen, wants: readonly Want[]): StepState {
  if (step === "record") return seen.draft.isRecorded ? "done" : "to do";
  if (step === "result") {
    if (seen.working.acid === undefined || isProblem(seen.working.acid)) return "to do";
    return seen.working.doubt === undefined ? "part done" : "done";
  }
  const open = wants.filter((want) => want.step === step);
  if (open.length === 0) return "done";
  return open.every((want) => want.for === "doubt") ? "part done" : "to do";
}
