/** The cells whose latest result came of something programs do not agree on: not to be saved. */
export interface Place {
  readonly unit: string;
  /** The engine's own name for the sheet. */
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

const keyOf = ({ unit, sheet, row, column }: Place): string =>
  `${unit}\n${sheet}\n${String(row)}\n${String(column)}`;

export class Doubts {
  private readonly cells = new Set<string>();
  private current: string | undefined;
  private changes = 0;
  private isIfEmpty = false;

  /** Another one whenever a cell is doubted, or no more. */
  get version(): number {
    return this.changes;
  }

  /** From now on this cell is worked out; what was doubted in it before is past. */
  begin(place: Place): void {
    this.current = keyOf(place);
    this.isIfEmpty = false;
    if (this.cells.delete(this.current)) this.changes += 1;
  }

  doubt(): void {
    if (this.current === undefined || this.cells.has(this.current)) return;
    this.cells.add(this.current);
    this.changes += 1;
  }

  doubtIfEmpty(): void {
    this.isIfEmpty = true;
  }

  /** The formula comes to an empty cell. */
  comesToEmpty(): void {
    if (this.isIfEmpty) this.doubt();
  }

  /** No cell is worked out any more. */
  end(): void {
    this.current = undefined;
  }

  isDoubtful(place: Place): boolean {
    return this.cells.has(keyOf(place));
  }

  forget(): void {
    this.cells.clear();
    this.changes += 1;
  }
}
