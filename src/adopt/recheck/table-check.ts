/** One table of a logbook: each of its rows checked, and what is to be said of all of them. */
import { basisOf } from "../recognising/basis";
import { columnOf, type LogbookMapping } from "../recognising/mapping";
import type { SheetCells } from "../recognising/sheet-cells";
import { totalsReader } from "../recognising/totals-row";
import type { CheckedRow } from "./judging/checked";
import { OddInputs } from "./judging/odd-inputs";
import { OpenChecker } from "./judging/check-openly";
import { AboveLimits } from "./reporting/above-limit";
import { ColumnDoubts } from "./reporting/column-doubt";
import type { AboveLimit, Finding, Latent, MethanolSeen, Unchecked } from "./reporting/finding";
import { latentIn } from "./reporting/latent";
import type { Lots } from "./lots";
import { isDose } from "./mistakes/mistake";
import { OddWaters } from "./reporting/odd-water";
import { roleOf } from "../recognising/roles";
import { MethanolLook } from "./reporting/methanol-seen";
import { whyNotChecked } from "./reporting/not-checked";
import { methanolReader } from "./reading/read-methanol";
import { waterReader } from "./reading/read-water";
import { rowReader } from "./reading/read-rows";
import type { Readings } from "./reading/readings";
import { takenFor } from "./reporting/taken";
import type { Tally } from "./reporting/tally";
import { UncheckedRows } from "./reporting/unchecked";
import { hasTitration } from "./arithmetic/row-arithmetic";

export interface FoundInTable {
  readonly rows: number;
  readonly findings: readonly Finding[];
  readonly latent: readonly Latent[];
  readonly unchecked: readonly Unchecked[];
  readonly aboveLimit: readonly AboveLimit[];
  readonly methanol: readonly MethanolSeen[];
  readonly taken: readonly string[];
  /** Why a dose was not checked; "" where none is held. */
  readonly noDose: string;
}

/** As many rows as tell a logbook's habits, from all over it. */
const rowsToLearn = 60;

const isHidden = ({ unread }: Readings): boolean => unread.some(({ hides }) => hides === "row");

export class TableCheck {
  private readonly read: (row: number) => Readings | undefined;
  private readonly checker: OpenChecker;
  private readonly asleep: ReturnType<typeof latentIn>;
  private readonly findings: Finding[] = [];
  private readonly doubts = new ColumnDoubts();
  private readonly odd: OddInputs;
  private readonly above: AboveLimits;
  private readonly waterAt: ReturnType<typeof waterReader>;
  private readonly oddWater: OddWaters;
  private readonly methanol: MethanolLook;
  private readonly unchecked = new UncheckedRows();
  private readonly sample: readonly Readings[];
  private rows = 0;
  private noDose = "";

  /** @param assay what other tables say of the lye */
  constructor(
    private readonly mapping: LogbookMapping,
    cells: SheetCells,
    private readonly lots: Lots,
    assay: number | undefined,
    private readonly tally: Tally,
  ) {
    const read = rowReader(mapping, cells, assay);
    const isTotals = totalsReader(mapping, cells);
    this.read = (row) => (isTotals(row) ? undefined : read(row));
    this.checker = new OpenChecker(mapping, lots);
    this.sample = this.sampled();
    this.checker.learn(this.sample);
    this.odd = new OddInputs(mapping, this.sample);
    const water = waterReader(mapping, cells);
    this.above = new AboveLimits(mapping.sheet, (row) => water(row).percent);
    this.waterAt = water;
    const { heading = "" } = columnOf(mapping, "waterContent") ?? {};
    this.oddWater = new OddWaters(mapping.sheet, heading || roleOf("waterContent").words);
    this.methanol = new MethanolLook(mapping.sheet, methanolReader(mapping, cells));
    this.asleep = latentIn(mapping);
  }

  /** The rows that were learned from, by what was learned. */
  sampleChecked(): CheckedRow[] {
    return this.sample.map((row) => this.checker.check(row));
  }

  check(row: number): void {
    const { sheet } = this.mapping;
    const readings = this.read(row);
    if (!readings) return;
    for (const { why, hides } of readings.unread) {
      this.unchecked.add(sheet, row, why);
      if (hides !== "figure" && this.noDose === "") this.noDose = why;
    }
    this.oddWater.look(row, this.waterAt(row).odd);
    this.methanol.look(readings);
    if (isHidden(readings) || (readings.held.size === 0 && !hasTitration(readings))) return;
    const linked = this.linked(readings);
    const check = (row: Readings) => this.checker.check(row);
    const checked = this.odd.look(check(linked), linked, check);
    this.above.look(checked);
    this.lots.remember(checked);
    this.findings.push(...checked.findings);
    this.doubts.look(checked);
    this.asleep.look(checked);
    this.tally.add(checked.figures);
    this.rows += 1;
    for (const each of checked.figures) {
      const column = columnOf(this.mapping, each.figure.role);
      const why = whyNotChecked(each, column, checked.readings);
      if (why === undefined) continue;
      this.unchecked.add(sheet, row, why);
      if (this.noDose === "" && isDose(each.figure.role)) this.noDose = why;
    }
  }

  found(): FoundInTable {
    const { instead, findings, roles } = this.doubts.found(
      this.findings,
      (role) => columnOf(this.mapping, role),
      basisOf(this.mapping, "baseCharge") !== undefined,
    );
    for (const [role, figures] of roles) this.tally.takeBack(role, figures);
    return {
      rows: this.rows,
      findings,
      latent: this.asleep.found(),
      aboveLimit: this.above.found(),
      methanol: this.methanol.found(),
      unchecked: [...instead, ...this.unchecked.found(), ...this.oddWater.found()],
      taken: this.rows === 0 ? [] : takenFor(this.mapping, this.sample, this.checker),
      noDose: this.noDose,
    };
  }

  private linked(readings: Readings): Readings {
    const lot = hasTitration(readings) ? undefined : this.lots.of(readings);
    return lot ? { ...readings, ofLot: lot } : readings;
  }

  private sampled(): Readings[] {
    const { firstRow, lastRow } = this.mapping.place;
    const step = Math.max(1, Math.floor((lastRow - firstRow + 1) / rowsToLearn));
    const found: Readings[] = [];
    for (let row = firstRow; row <= lastRow; row += step) {
      const readings = this.read(row);
      if (readings && !isHidden(readings)) found.push(this.linked(readings));
    }
    return found;
  }
}
