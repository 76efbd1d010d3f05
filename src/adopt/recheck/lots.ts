/** What the tables that titrate say of each lot, for batches that start from it in another table. */
import type { CheckedRow } from "./judging/checked";
import type { MistakeId } from "./mistakes/all";
import type { Finding } from "./reporting/finding";
import type { HeldFigure } from "./reading/held-figure";
import type { OfLot, Readings } from "./reading/readings";
import { acidValue, fromNothing, hasTitration } from "./arithmetic/row-arithmetic";

interface Known {
  readonly lot: string;
  readonly row: number;
  readonly day: number | undefined;
  readonly acidValue: number | undefined;
  readonly acidValues: readonly number[];
  readonly heldAcidValue: number | undefined;
  readonly heldFfa: number | undefined;
  readonly doubts: OfLot["doubts"];
  readonly mistake: MistakeId | undefined;
  readonly orElse: Finding["orElse"];
}

export interface WrongLot {
  readonly mistake: MistakeId;
  readonly orElse: Finding["orElse"];
  /** Of its titration, counted from 0. */
  readonly row: number;
}

const doubtOf = (held: HeldFigure | undefined): number =>
  held ? held.halfDigit / Math.abs(held.value) : 0;

const key = (lot: string): string => lot.trim().toLowerCase();

/** Lots titrated so many rows before or after are the ones that may be taken for each other. */
const neighbours = 3;

export class Lots {
  private readonly inOrder: Known[] = [];
  private readonly byLot = new Map<string, number[]>();

  remember({ readings, titration, findings, acidValues = [] }: CheckedRow): void {
    const { lot, row, day, held } = readings;
    if (lot === "" || !hasTitration(readings)) return;
    const places = this.byLot.get(key(lot)) ?? [];
    places.push(this.inOrder.length);
    this.byLot.set(key(lot), places);
    this.inOrder.push({
      lot: key(lot),
      row,
      day,
      acidValue: acidValue(titration, {}, fromNothing),
      acidValues,
      heldAcidValue: held.get("acidValue")?.value,
      heldFfa: held.get("ffa")?.value,
      doubts: { acidValue: doubtOf(held.get("acidValue")), ffa: doubtOf(held.get("ffa")) },
      mistake: findings[0]?.mistake,
      orElse: findings[0]?.orElse,
    });
  }

  /** The last titration of a row's lot, not later than the row where both days are known. */
  of({ lot, day }: Readings): OfLot | undefined {
    const all = lot === "" ? [] : (this.byLot.get(key(lot)) ?? []);
    const isBefore = (at: number): boolean => {
      const own = this.inOrder[at]?.day;
      return day === undefined || own === undefined || own <= day;
    };
    const at = all.filter(isBefore).at(-1) ?? all.at(-1);
    const known = at === undefined ? undefined : this.inOrder[at];
    return at === undefined || !known ? undefined : this.told(at, known);
  }

  /** What is wrong with the titration that a row starts from. */
  wrong(of: OfLot | undefined): WrongLot | undefined {
    const { mistake, orElse, row = 0 } = (of && this.inOrder[of.at]) ?? {};
    return mistake && { mistake, orElse, row };
  }

  private told(at: number, known: Known): OfLot {
    const others = this.inOrder
      .slice(Math.max(0, at - neighbours), at + neighbours + 1)
      .filter((each) => each.lot !== known.lot);
    return {
      at,
      acidValue: known.acidValue,
      acidValues: known.acidValues,
      heldAcidValue: known.heldAcidValue,
      heldFfa: known.heldFfa,
      doubts: known.doubts,
      otherAcidValues: others.flatMap(({ heldAcidValue }) => heldAcidValue ?? []),
      otherFfas: others.flatMap(({ heldFfa }) => heldFfa ?? []),
    };
  }
}
