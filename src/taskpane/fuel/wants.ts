/** What is still wanted, and where. A step in which nothing was begun wants nothing: not all is measured. */
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import type { NumberFigures } from "../fields/number-figures";
import { waterFound, waterTrouble } from "../water/found";
import type { Draft } from "./draft";
import type { NumberFieldId } from "./fields";
import { fuel, type StepId } from "./fuel";
import type { Working } from "./working";

export interface Want {
  readonly step: StepId;
  readonly sentence: string;
}

export interface Seen {
  readonly draft: Draft;
  readonly figures: NumberFigures<NumberFieldId>;
  readonly working: Working;
}

/** Without these a step that was begun is not whole. */
const needed: Readonly<Partial<Record<StepId, readonly NumberFieldId[]>>> = {
  acid: ["acidMolarity", "acidMass", "acidTitre1"],
  soap: ["soapMolarity", "soapMass", "soapTitre"],
};
const begins: Readonly<Partial<Record<StepId, readonly NumberFieldId[]>>> = {
  acid: ["acidMass", "acidTitre1", "acidTitre2", "acidTitre3"],
  soap: ["soapMass", "freeBaseTitre", "soapTitre"],
};
const fieldsOf: Readonly<Partial<Record<StepId, readonly NumberFieldId[]>>> = {
  batch: ["washes", "litres"],
  acid: [
    ...(needed.acid ?? []),
    "acidTitre2",
    "acidTitre3",
    "acidBlank",
    "titreStep",
    "massStep",
    "acidPercent",
  ],
  soap: [...(needed.soap ?? []), "freeBaseTitre", "soapBlank", "titreStep", "soapPercent"],
  water: [
    "water",
    "dish",
    "wetMass",
    "dryMass",
    "dryingStep",
    "pressureRise",
    "gasSpace",
    "gasTemperature",
    "gasMass",
  ],
};

const isBegun = (step: StepId, { draft }: Pick<Seen, "draft">): boolean =>
  (begins[step] ?? []).some((field) => (draft.typed[field] ?? "") !== "");

function ofStep(step: StepId, seen: Seen): Want[] {
  const { figures } = seen;
  const wrong = (fieldsOf[step] ?? []).flatMap((field) => {
    const judged = figures.judged(field);
    return judged.kind === "wrong" ? [{ step, sentence: judged.sentence }] : [];
  });
  const missing = isBegun(step, seen)
    ? (needed[step] ?? []).filter((field) => figures.judged(field).kind === "empty")
    : [];
  return [
    ...wrong,
    ...missing.map((field) => ({ step, sentence: `Fill in ${figures.fact(field).label}.` })),
  ];
}

function ofResults({ draft, figures, working }: Seen): Want[] {
  const water = waterFound(draft.picked.waterBy, figures);
  const acid = working.acid?.value;
  const soap = [working.soap?.soap, working.soap?.freeBase].find((each) => isProblem(each));
  return [
    ...(isProblem(acid) ? [{ step: "acid", sentence: say(acid) } as const] : []),
    ...(isProblem(soap) ? [{ step: "soap", sentence: say(soap) } as const] : []),
    ...(isProblem(water) ? [{ step: "water", sentence: waterTrouble(water) } as const] : []),
  ];
}

/** Something was found at all. */
const isAny = ({ working, draft }: Seen): boolean =>
  working.acid !== undefined ||
  working.soap !== undefined ||
  working.found.water !== undefined ||
  draft.picked.trial !== "";

export function wanted(seen: Seen): readonly Want[] {
  const { draft } = seen;
  const batch: Want[] = [
    ...(draft.words.batch.trim() === ""
      ? [{ step: "batch", sentence: "Fill in Batch." } as const]
      : []),
    ...(draft.picked.washed === ""
      ? [{ step: "batch", sentence: "Is the fuel washed? Soap hides acid." } as const]
      : []),
  ];
  const steps = Object.keys(fuel.steps) as StepId[];
  const found = [...batch, ...steps.flatMap((step) => ofStep(step, seen)), ...ofResults(seen)];
  return isAny(seen) || found.length > 0
    ? found
    : [
        {
          step: "acid",
          sentence: "Nothing is measured yet: acid value, soap, water or the trial.",
        },
      ];
}

export function stateOf(step: StepId, seen: Seen, wants: readonly Want[]): "done" | "to do" {
  const isWanting = wants.some((want) => want.step === step);
  switch (step) {
    case "record":
      return seen.draft.isRecorded ? "done" : "to do";
    case "acid":
      return seen.working.acid !== undefined && !isWanting ? "done" : "to do";
    case "soap":
      return seen.working.soap !== undefined && !isWanting ? "done" : "to do";
    case "water":
      return (seen.working.found.water !== undefined || seen.draft.picked.trial !== "") &&
        !isWanting
        ? "done"
        : "to do";
    case "meaning":
      return wants.length === 0 ? "done" : "to do";
    case "batch":
      return isWanting ? "to do" : "done";
  }
}
