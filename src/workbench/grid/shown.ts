/** The workbook that the grid shows. */
import {
  type IDisposable as Disposable,
  IUniverInstanceService,
  type IWorkbookData,
  type Univer,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { Failures } from "../engine/steady/failures";
import type { WorkbookCells } from "../engine/workbook-cells";
import { type GridState, gridState } from "../file/grid-state";
import type { HeldTerms } from "../holding/held-terms";
import type { Holding } from "../holding/holding";
import { surroundingsOf } from "../holding/surroundings";
import type { Selection } from "../selection";
import { editWhereTheCellStands } from "./editor-place";
import { forgetUnit } from "./forget-unit";
import { soon, worked } from "./until-calculated";
import { showView, type View } from "./view";
import { watchSelection } from "./watch-selection";

/** One workbook after another: what belongs to the one that goes must go with it. */
export class Shown {
  private shown: Disposable | undefined;
  /** Since the workbook was opened, something was not worked out to its end. */
  private isStopped = false;

  constructor(
    private readonly univer: Univer,
    private readonly cells: WorkbookCells,
    private readonly selection: Selection,
    private readonly holding: Holding,
    private readonly failures: Failures,
    private readonly api: FUniver,
    /** Told when a workbook is worked out, before it is looked at. */
    private readonly worksOut: () => void,
  ) {
    failures.onStop(() => {
      this.isStopped = true;
    });
  }

  state(): GridState {
    return gridState(this.univer.__getInjector(), this.cells, this.holding, this.isStopped);
  }

  async show(
    snapshot: IWorkbookData,
    terms: HeldTerms,
    progress?: (percent: number) => void,
    view?: View,
  ): Promise<GridState> {
    const injector = this.univer.__getInjector();
    this.holding.begin(snapshot.id, surroundingsOf(injector, snapshot.id), terms);
    this.isStopped = false;
    const units = injector.get(IUniverInstanceService);
    const old = units
      .getAllUnitsForType<Workbook>(UniverInstanceType.UNIVER_SHEET)
      .map((unit) => unit.getUnitId());
    this.univer.createUnit<IWorkbookData, never>(UniverInstanceType.UNIVER_SHEET, snapshot);
    // before anything of it is drawn
    if (view) showView(this.api, view);
    this.shown?.dispose();
    this.selection.set(undefined);
    for (const unit of old) {
      units.disposeUnit(unit);
      forgetUnit(injector, unit);
    }
    return this.settle(terms, progress);
  }

  /** Returns what the new workbook holds once it is worked out, before anybody can change it. */
  async settle(terms: HeldTerms, progress?: (percent: number) => void): Promise<GridState> {
    const injector = this.univer.__getInjector();
    await worked(injector, this.failures, progress, terms.all === undefined ? undefined : soon);
    this.worksOut();
    editWhereTheCellStands(injector, this.cells.names);
    this.shown = watchSelection(injector, this.cells, this.selection, this.holding);
    return this.state();
  }
}
