/** Formulas that are held whatever they read, by the cells they stand in. */
import { keyAt } from "./cell-keys";
import type { IsHeld } from "./held-terms";
import { type HeldPlace, type Marks, put } from "./marks";
import { differs } from "./reasons";

export class OwnMarks {
  private readonly marks: Marks<{ readonly formula: string; readonly says: string }> = new Map();

  constructor(differing: readonly HeldPlace[] = []) {
    for (const place of differing) this.put(place, differs);
  }

  put({ sheet, key, formula }: HeldPlace, says: string): void {
    put(this.marks, sheet, key, { formula, says });
  }

  /** The reason, while the formula is the one that was marked. */
  says(sheet: string, key: number, formula: string): string | undefined {
    const mark = this.marks.get(sheet)?.get(key);
    return mark?.formula === formula ? mark.says : undefined;
  }

  /** Those that came to something else than the file says. */
  differing(): IsHeld {
    const { marks } = this;
    return (sheet, row, column) => marks.get(sheet)?.get(keyAt(row, column))?.says === differs;
  }
}
