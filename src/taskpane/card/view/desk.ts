/** What every part of the card sees and may do. */
import { createContext, useContext } from "react";
import type { Host } from "../../../sheet/port";
import type { Batches, RecordedBatch } from "../../../workbook/planning/read-batches";
import type { DecimalMark } from "../../widgets/typed-number";
import type { Action, Draft } from "../draft";

export interface Desk {
  readonly host: Host;
  readonly batch: RecordedBatch;
  readonly batches: Batches;
  readonly draft: Draft;
  readonly act: (action: Action) => void;
  readonly mark: DecimalMark;
  /** A figure or a sentence in this person's way of writing numbers. */
  readonly inMark: (text: string) => string;
}

export const CardDesk = createContext<Desk | undefined>(undefined);

export function useCard(): Desk {
  const desk = useContext(CardDesk);
  if (desk === undefined) throw new Error("a part of the card stands outside it");
  return desk;
}
