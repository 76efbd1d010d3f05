/**
 * Who reads a cell: asked for one cell after another while what hangs on them is followed. A block is
 * given up once it was hit, since whoever reads it is known by then; so following a whole workbook takes
 * about as long as noting it.
 */
import { keyAt } from "./cell-keys";

/** Both ends belong to it. NaN, as the grid has it for whole columns, is without an end. */
export interface ReadBlock {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

interface Noted<T> extends ReadBlock {
  readonly readers: T[];
  isHit: boolean;
}

const rowsInBand = 64;
/** Blocks over more bands than this are asked every time. */
const mostBands = 256;

class SheetReaders<T> {
  private readonly ofCell = new Map<number, T[]>();
  private readonly blocks = new Map<string, Noted<T>>();
  private readonly bands = new Map<number, Noted<T>[]>();
  private tall: Noted<T>[] = [];

  note(block: ReadBlock, reader: T): void {
    const { top, left, bottom, right } = block;
    if (top === bottom && left === right) {
      const known = this.ofCell.get(keyAt(top, left));
      if (known) known.push(reader);
      else this.ofCell.set(keyAt(top, left), [reader]);
      return;
    }
    const name = `${String(top)},${String(left)},${String(bottom)},${String(right)}`;
    const known = this.blocks.get(name);
    if (known) {
      known.readers.push(reader);
      return;
    }
    const noted = { ...block, readers: [reader], isHit: false };
    this.blocks.set(name, noted);
    const first = Math.floor(top / rowsInBand);
    const last = Math.floor(bottom / rowsInBand);
    if (last - first >= mostBands) this.tall.push(noted);
    else for (let band = first; band <= last; band += 1) this.inBand(band).push(noted);
  }

  private inBand(band: number): Noted<T>[] {
    const known = this.bands.get(band);
    if (known) return known;
    const made: Noted<T>[] = [];
    this.bands.set(band, made);
    return made;
  }

  take(row: number, column: number): T[] {
    const key = keyAt(row, column);
    const found = this.ofCell.get(key) ?? [];
    this.ofCell.delete(key);
    const hit = (noted: Noted<T>): boolean => {
      if (noted.isHit) return false;
      const isWithin =
        noted.top <= row && row <= noted.bottom && noted.left <= column && column <= noted.right;
      if (!isWithin) return true;
      noted.isHit = true;
      found.push(...noted.readers);
      return false;
    };
    const band = Math.floor(row / rowsInBand);
    const inBand = this.bands.get(band);
    if (inBand) this.bands.set(band, inBand.filter(hit));
    this.tall = this.tall.filter(hit);
    return found;
  }
}

export class Readers<T> {
  private readonly sheets = new Map<string, SheetReaders<T>>();

  note(block: ReadBlock, reader: T): void {
    let sheet = this.sheets.get(block.sheet);
    if (!sheet) this.sheets.set(block.sheet, (sheet = new SheetReaders<T>()));
    sheet.note(block, reader);
  }

  /** Those who read a cell and were not named before. */
  take(sheet: string, row: number, column: number): T[] {
    return this.sheets.get(sheet)?.take(row, column) ?? [];
  }
}
