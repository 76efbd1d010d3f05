/** What is still wanted, where, and for what: a weigh-out, or the row. */
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { allowedWords, limits, misses } from "../../core/reference/limits";
import { oilNamed } from "../../core/reference/oils";
import type { StepId } from "./batch";
import type { NumberFieldId } from "./fields";
import { isHeldBack } from "./acid-worth";
import { notOneLye } from "./same-lye";
import { chosenLots, mixTrouble } from "./mix";
import { digits } from "../widgets/shown-number";
import { type WaterField, waterFields } from "../water/fields";
import { noAcidWords } from "../lots/not-yet";
import { waterFound, waterTrouble } from "../water/found";
import type { Seen } from "./seen";

export interface Want {
  readonly step: StepId;
  readonly sentence: string;
  /** Without it there is no weigh-out; no row. */
  readonly for: "weigh-out" | "record";
}

/** A field that is empty though it may not be, or wrong. */
function wants({ figures }: Seen, step: StepId, field: NumberFieldId): Want[] {
  const judged = figures.judged(field);
  if (judged.kind === "wrong") return [{ step, sentence: judged.sentence, for: "weigh-out" }];
  const fact = figures.fact(field);
  return judged.kind === "empty" && !fact.isOptional
    ? [{ step, sentence: `Fill in ${fact.label}.`, for: "weigh-out" }]
    : [];
}

const oilSays = (sentence: string): Want => ({ step: "oil", sentence, for: "weigh-out" });

function lots(seen: Seen): Want[] {
  const { draft, recorded } = seen;
  if (draft.lots.length === 0) return [oilSays("Choose a lot.")];
  return chosenLots(draft, recorded).flatMap((lot, at) => {
    const name = draft.lots[at]?.lot ?? "";
    if (lot === undefined) return [oilSays(`Lot ${name} is not in the table Titrations any more.`)];
    if (lot.acidValue === undefined) {
      return [oilSays(`Lot ${name}: ${noAcidWords(lot)}.`)];
    }
    return lot.oil !== "" && oilNamed(lot.oil) === undefined
      ? [oilSays(`“${lot.oil}” of lot ${name} is no oil known here: put it right in its row.`)]
      : [];
  });
}

function shares({ draft, figures, working }: Seen): Want[] {
  if (draft.lots.length < 2) return [];
  if (isProblem(working.mix)) return [oilSays(mixTrouble(working.mix))];
  if (draft.lots.length === 2 && draft.picked.mixedBy === "target") {
    const target = figures.judged("target");
    if (target.kind === "wrong") return [oilSays(target.sentence)];
    return target.kind === "empty" ? [oilSays("Fill in Target.")] : [];
  }
  const found = draft.lots.slice(0, -1).flatMap(({ lot }) => {
    const judged = figures.share(lot);
    if (judged.kind === "wrong") return [oilSays(`Lot ${lot}: ${judged.sentence}`)];
    return judged.kind === "empty" ? [oilSays(`Fill in the share of lot ${lot}.`)] : [];
  });
  if (found.length > 0 || working.mix !== undefined) return found;
  const sum = draft.lots.slice(0, -1).reduce((total, { lot }) => {
    const judged = figures.share(lot);
    return judged.kind === "figure" ? total + judged.value.toNumber() : total;
  }, 0);
  return sum >= 100
    ? [oilSays(`The shares come to ${digits(sum, 5)} %: nothing is left for the last lot.`)]
    : [];
}

const waterFieldIds = ["water", ...(Object.keys(waterFields) as WaterField[])] as const;

function waterWrong({ draft, figures }: Seen): Want[] {
  const found = waterFound(draft.picked.waterBy, figures);
  return isProblem(found) ? [oilSays(waterTrouble(found))] : [];
}

function oil(seen: Seen): Want[] {
  const { oilMass } = seen.working;
  const step = "oil";
  return [
    ...lots(seen),
    ...shares(seen),
    ...wants(seen, step, "amount"),
    ...wants(seen, step, "temperature"),
    ...waterFieldIds.flatMap((field) => wants(seen, step, field)),
    ...waterWrong(seen),
    ...(isProblem(oilMass) ? [oilSays(say(oilMass))] : []),
  ];
}

function titrant({ draft, recorded }: Seen): Want[] {
  if (draft.picked.titrantLye !== "same") return [];
  const chosen = chosenLots(draft, recorded).filter((lot) => lot !== undefined);
  const step = "lye";
  const other = notOneLye(draft, recorded);
  if (other !== undefined) return [{ step, sentence: other, for: "weigh-out" }];
  const pure = chosen.filter(({ isAsIfPure }) => isAsIfPure).length;
  if (pure === 0 || pure === chosen.length) return [];
  const sentence =
    "One lot was titrated with lye taken as pure, another was not: put the assay into its titration first.";
  return [{ step, sentence, for: "weigh-out" }];
}

function charge(seen: Seen): Want[] {
  const { draft, working } = seen;
  const step = "lye";
  const field = draft.picked.chargeUnit === "%" ? "chargePercent" : "chargeGrams";
  const found = wants(seen, step, field);
  if (draft.picked.chargeIs === "") {
    const sentence = "Is the base charge pure base, or lye as weighed?";
    return [...found, { step, sentence, for: "weigh-out" }];
  }
  const percent = working.charge;
  if (percent === undefined) return found;
  if (isProblem(percent)) return [...found, { step, sentence: say(percent), for: "weigh-out" }];
  if (misses(percent, limits.baseCharge) === undefined) return found;
  const sentence = `The base charge comes to ${digits(percent)} % pure base; allowed: ${allowedWords(limits.baseCharge)}.`;
  return [...found, { step, sentence, for: "weigh-out" }];
}

function methanol(seen: Seen): Want[] {
  const { draft, working } = seen;
  const step = "methanol";
  const { ratio } = working;
  const field = draft.picked.methanolBy === "ratio" ? "ratio" : "volumePercent";
  const found = [...wants(seen, step, field), ...wants(seen, step, "limit")];
  if (ratio === undefined) return found;
  if (isProblem(ratio)) return [...found, { step, sentence: say(ratio), for: "weigh-out" }];
  if (misses(ratio, limits.molarRatio) === undefined) return found;
  const sentence = `The methanol comes to ${digits(ratio)} to 1; allowed: ${allowedWords(limits.molarRatio)}.`;
  return [...found, { step, sentence, for: "weigh-out" }];
}

function row({ draft }: Seen): Want[] {
  const found: Want[] = [];
  if (draft.words.batch.trim() === "") {
    found.push({ step: "oil", sentence: "Fill in Batch.", for: "record" });
  }
  return found;
}

/** Everything still wanted, in the order of the steps. */
export const wanted = (seen: Seen): Want[] => [
  ...oil(seen),
  ...titrant(seen),
  ...wants(seen, "lye", "assay"),
  ...charge(seen),
  ...methanol(seen),
  ...row(seen),
];

export const forWeighOut = (all: readonly Want[]): Want[] =>
  all.filter((want) => want.for === "weigh-out");

export type StepState = "done" | "part done" | "to do";

export function stateOf(step: StepId, seen: Seen, all: readonly Want[]): StepState {
  if (step === "record") return seen.draft.isRecorded ? "done" : "to do";
  if (step === "weigh-out") {
    const { batch } = seen.working;
    return batch === undefined ||
      isProblem(batch) ||
      isHeldBack(seen) ||
      forWeighOut(all).length > 0
      ? "to do"
      : "done";
  }
  const open = all.filter((want) => want.step === step);
  if (forWeighOut(open).length > 0) return "to do";
  return open.length > 0 ? "part done" : "done";
}
