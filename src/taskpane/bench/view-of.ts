/** All that follows from what the form holds: each figure judged, and the values that would be kept. */
import { benchIds, type BenchId, type BenchValues } from "../../workbook/tables/bench";
import { type NumberFigures, numberFigures } from "../fields/number-figures";
import type { DecimalMark } from "../widgets/typed-number";
import { bench, type BenchFigure, isChoice, isFigure, isText } from "./bench";
import type { Draft } from "./draft";

export interface View {
  readonly draft: Draft;
  readonly mark: DecimalMark;
  readonly figures: NumberFigures<BenchFigure>;
  /** Undefined while a figure is wrong: its field says so. */
  readonly values: BenchValues | undefined;
  /** Figures that mean nothing yet without a word beside them, a sentence each. */
  readonly wants: readonly string[];
}

const isCharge = (id: BenchFigure): boolean => id.startsWith("charge");

/** A charge and an amount are in what was picked beside them. */
function unitOf(id: BenchFigure, { picked }: Draft): string {
  if (id === "amount" || id === "vessel") return picked.unit;
  // until one is chosen the box says what it may be in
  return isCharge(id) ? picked.chargeUnit || "g/L or %" : bench.fields[id].unit;
}

function valuesOf(draft: Draft, figures: View["figures"]): BenchValues | undefined {
  const found: Partial<Record<BenchId, string>> = {};
  for (const id of benchIds) {
    if (isText(id)) found[id] = draft.words[id].trim();
    if (isChoice(id)) found[id] = draft.picked[id];
    if (!isFigure(id)) continue;
    const judged = figures.judged(id);
    if (judged.kind === "wrong") return undefined;
    found[id] = judged.kind === "figure" ? judged.plain : "";
  }
  return found;
}

/** 55 of what? */
function wantsOf({ typed, picked }: Draft): string[] {
  const isTyped = (...ids: BenchFigure[]) => ids.some((id) => (typed[id] ?? "").trim() !== "");
  const isCharged = isTyped(...benchIds.filter(isFigure).filter(isCharge));
  return [
    ...(isTyped("amount") && picked.unit === ""
      ? ["Usual batch is not used until you choose what oil is measured in."]
      : []),
    ...(isCharged && (picked.chargeUnit === "" || picked.chargeIs === "")
      ? [
          "The charge is not used until you choose what it is given in, and whether it is pure base.",
        ]
      : []),
  ];
}

export function viewOf(draft: Draft, mark: DecimalMark): View {
  const figures = numberFigures<BenchFigure>(
    draft.typed,
    (id) => ({ ...bench.fields[id], unit: unitOf(id, draft) }),
    mark,
  );
  return { draft, mark, figures, values: valuesOf(draft, figures), wants: wantsOf(draft) };
}
