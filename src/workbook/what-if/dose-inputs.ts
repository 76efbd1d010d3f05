/**
 * The figures a dose rests on, each once: what it is called, and what stands in its cell. Those that
 * are compared stand across the head of the table, the others above it.
 */
import type { BookCell, BookValue } from "../../sheet/book";
import { ofLastTitration } from "../tables/last-titration";
import type { Compared, DoseColumn } from "./question";

export type FigureId = "lot" | "acid" | "ffa" | "base" | "assay" | "charge";

export interface Figure {
  readonly id: FigureId;
  readonly label: string;
  /** Its unit, or what else tells it; "" for none. */
  readonly unit: string;
}

const all: readonly Figure[] = [
  { id: "lot", label: "Lot", unit: "in Titrations" },
  { id: "acid", label: "Acid value", unit: "mg KOH/g" },
  { id: "ffa", label: "FFA", unit: "% as oleic" },
  { id: "base", label: "Base", unit: "of the lye" },
  { id: "assay", label: "Assay", unit: "% of lye" },
  { id: "charge", label: "Charge", unit: "% of oil, pure" },
];

const acrossWhen: Record<Compared, readonly FigureId[]> = {
  acid: ["lot", "acid", "ffa"],
  assay: ["assay"],
  charge: ["charge"],
  base: ["base", "assay", "charge"],
};

const has = (columns: readonly DoseColumn[]) => (each: Figure) =>
  each.id !== "lot" || columns.some(({ acid }) => acid.lot !== undefined);

export const figuresAcross = (by: Compared, columns: readonly DoseColumn[]): readonly Figure[] =>
  all.filter(({ id }) => acrossWhen[by].includes(id)).filter(has(columns));

export const figuresAbove = (by: Compared, columns: readonly DoseColumn[]): readonly Figure[] =>
  all.filter(({ id }) => !acrossWhen[by].includes(id)).filter(has(columns));

const typed = (value: BookValue): BookCell => ({ value, style: "input" });

/** The lot's last row: a lot titrated again counts anew. */
const ofLot = (lot: string): string => `=${ofLastTitration("Acid value mg KOH/g", lot)}`;

/** @param at the cell of another figure of the same column, as a formula writes it */
export function figureCell(
  id: FigureId,
  { acid, base, assay, charge }: DoseColumn,
  at: (id: FigureId) => string,
): BookCell | null {
  switch (id) {
    case "lot":
      return acid.lot === undefined ? null : typed(acid.lot);
    case "acid":
      if (acid.lot !== undefined)
        return { formula: ofLot(at("lot")), style: "calculated", format: "0.00" };
      return acid.ffa === undefined
        ? typed(acid.value.toNumber())
        : {
            formula: `=TITRE.ACIDVALUEFROMFFA(${at("ffa")})`,
            style: "calculated",
            format: "0.00",
          };
    case "ffa":
      if (acid.ffa !== undefined) return typed(acid.ffa.toNumber());
      return {
        formula: `=TITRE.FFAFROMACIDVALUE(${at("acid")})`,
        style: "calculated",
        format: "0.00",
      };
    case "base":
      return typed(base.name);
    case "assay":
      return typed(assay.toNumber());
    case "charge":
      return typed(charge.toNumber());
  }
}
