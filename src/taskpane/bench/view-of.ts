/** All that follows from what the form holds: each figure judged, and the values that would be kept. */
import { benchIds, type BenchId, type BenchValues } from "../../workbook/tables/bench";
import { type NumberFigures, numberFigures } from "../fields/number-figures";
import type { DecimalMark } from "../widgets/typed-number";
import { bench, type BenchChoice, type BenchFigure, isFigure } from "./bench";
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

/** A charge and an amount are in what was picked beside them. */
function unitOf(id: BenchFigure, { picked }: Draft): string {
  if (id === "amount") return picked.unit;
  return id === "chargeKOH" || id === "chargeNaOH" ? picked.chargeUnit : bench.fields[id].unit;
}

function valuesOf(draft: Draft, figures: View["figures"]): BenchValues | undefined {
  const found: Partial<Record<BenchId, string>> = {};
  for (const id of benchIds) {
    if (!isFigure(id)) {
      found[id] = draft.picked[id as BenchChoice];
      continue;
    }
    const judged = figures.judged(id);
    if (judged.kind === "wrong") return undefined;
    found[id] = judged.kind === "figure" ? judged.plain : "";
  }
  return found;
}

/** 55 of what? */
function wantsOf({ typed, picked }: Draft): string[] {
  const isTyped = (...ids: BenchFigure[]) => ids.some((id) => (typed[id] ?? "").trim() !== "");
  const isCharged = isTyped("chargeKOH", "chargeNaOH");
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
