/**
 * The embedded engine asks every formula of a workbook anew what it reads, at every change of one cell,
 * and notes each block it reads once more: a change took the longer, the more formulas there are and the
 * more changes came before. Here what a formula reads is kept for as long as only cells change. And
 * formulas that are held (holding/holding.ts) are neither asked nor run.
 */
import {
  FormulaDependencyGenerator,
  type FormulaDependencyTree,
  type FormulaDependencyTreeVirtual,
  type IFormulaData,
  type IOtherFormulaData,
  type IUnitData,
} from "@univerjs/engine-formula";
import { blockOf } from "../holding/engine-blocks";
import type { Holding } from "../holding/holding";
import { circular, unread } from "../holding/reasons";
import { inCircles } from "./circles";
import { askedOf, isAlike, isFixed, isNone, isSame, type Known, unparsed } from "./known-formula";

type Tree = FormulaDependencyTree | FormulaDependencyTreeVirtual;

/** Formulas read in one go while a whole workbook is opened: some 40 ms, then the page has its turn. */
const atOnce = 2000;

export class Remembering extends FormulaDependencyGenerator {
  /** By the engine's number of the cell's formula: a cell whose formula is changed gets another. */
  private known = new Map<number, Known>();
  private surroundings = "";
  private isChanged = true;
  private held = new Set<number>();
  holding: Holding | undefined;

  protected override async _generateTreeList(
    formulas: IFormulaData,
    others: IOtherFormulaData,
    units: IUnitData,
  ): Promise<Tree[]> {
    const isWhole = this._currentConfigService.isForceCalculate();
    if (isWhole) this._dependencyManagerService.reset();
    if (this.hasMoved(units) || isWhole) {
      this.known.clear();
      this.holding?.forget();
    }
    const trees: Tree[] = [];
    this._registerFormulas(Object.keys(formulas), formulas, units, trees);
    this._registerOtherFormulas(others, Object.keys(others), trees);
    this._registerFeatureFormulas(trees as FormulaDependencyTree[]);
    const known = new Map<number, Known>();
    for (const [at, tree] of trees.entries()) {
      if (!tree.formula) continue;
      const before = this.known.get(tree.treeId);
      const now = this.recalled(tree, before) ?? (await this.ask(tree, before));
      known.set(tree.treeId, now);
      this.isChanged ||= before !== now && !(before && isAlike(before, now));
      // what stands in the engine's index already is not put there again
      if (before && isSame(before.ranges, now.ranges)) tree.isCache = true;
      if (isWhole && at % atOnce === atOnce - 1) await new Promise((soon) => setTimeout(soon));
    }
    for (const tree of trees) {
      if (!tree.isCache) this._dependencyManagerService.addDependencyRTreeCache(tree);
    }
    this.isChanged ||= known.size !== this.known.size;
    this.known = known;
    this.settle(trees);
    if (trees.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0)) {
      await this._calculateListByFunctionRefNode(trees);
    }
    return trees;
  }

  /** Finds the formulas that must not be run. Those that may be again have waited for it. */
  private settle(trees: readonly Tree[]): void {
    const { holding } = this;
    if (!holding) return;
    const ours = trees.filter((tree) => tree.formula && holding.isOf(tree.unitId));
    if (this.isChanged) {
      const areas = this._currentConfigService.getArrayFormulaRange();
      holding.settle(
        ours.map((tree) => askedOf(tree, this.known.get(tree.treeId))),
        ({ sheet, row, column }) => {
          const range = areas[ours[0]?.unitId ?? ""]?.[sheet]?.[row]?.[column];
          return range && blockOf({ unitId: "", sheetId: sheet, range });
        },
      );
      this.isChanged = false;
    }
    const before = this.held;
    this.held = new Set();
    if (holding.isEmpty && before.size === 0) return;
    for (const tree of ours) {
      const isHeld = holding.reasonAt(tree.subUnitId, tree.row, tree.column) !== undefined;
      if (isHeld) this.held.add(tree.treeId);
      else if (before.has(tree.treeId)) tree.isDirty = true;
    }
  }

  /** What goes round in a circle, or hangs on what does, is held: the engine would give some figure. */
  protected override _checkIsCycleDependency(trees: Tree[]): boolean {
    if (!super._checkIsCycleDependency(trees)) return false;
    const { holding } = this;
    if (!holding) return true;
    const circling = inCircles(trees, (tree) =>
      this._dependencyManagerService.searchDependency(tree.toRTreeItem()),
    );
    for (const tree of circling) this.holdCircular(tree, holding);
    const kept = trees.filter((tree) => !circling.has(tree));
    trees.splice(0, trees.length, ...kept);
    return false;
  }

  private holdCircular(tree: Tree, holding: Holding): void {
    const known = this.known.get(tree.treeId);
    if (!known || !holding.isOf(tree.unitId)) return;
    holding.mark(tree.subUnitId, tree.row, tree.column, tree.formula, circular);
    this.known.set(tree.treeId, { ...known, held: circular });
    this.held.add(tree.treeId);
    this.isChanged = true;
  }

  protected override _calculateRunList(trees: Tree[]): Tree[] {
    const all = super._calculateRunList(trees);
    return this.held.size === 0 ? all : all.filter(({ treeId }) => !this.held.has(treeId));
  }

  /** Did anything change that a formula may go by, other than cells? */
  private hasMoved(units: IUnitData): boolean {
    const config = this._currentConfigService;
    const sizes = Object.values(units).flatMap((sheets) =>
      Object.values(sheets ?? {}).map((sheet) => [sheet?.rowCount, sheet?.columnCount]),
    );
    const now = JSON.stringify([config.getSheetNameMap(), sizes]);
    const isElsewhere = now !== this.surroundings;
    this.surroundings = now;
    return (
      isElsewhere ||
      !isNone(config.getDirtyNameMap()) ||
      !isNone(config.getDirtyDefinedNameMap()) ||
      !isNone(config.getDirtySuperTableMap()) ||
      !isNone(config.getClearDependencyTreeCache())
    );
  }

  private recalled(tree: Tree, before: Known | undefined): Known | undefined {
    if (!before?.isFixed || tree.isVirtual || before.formula !== tree.formula) return undefined;
    tree.isDirty = before.held === undefined && this._includeTree(tree, unparsed);
    (tree as FormulaDependencyTree).pushRangeList([...before.ranges]);
    return before;
  }

  /** A held formula is not put to the engine at all: some kinds would end all its work. */
  private async ask(tree: Tree, before: Known | undefined): Promise<Known> {
    const { formula } = tree;
    const holding = this.holding?.isOf(tree.unitId) === true ? this.holding : undefined;
    const { subUnitId, row, column } = tree;
    const held =
      before?.formula === formula
        ? before.held
        : holding?.ownReason(subUnitId, row, column, formula);
    const alone = (says: string): Known => {
      tree.isDirty = false;
      return { formula, ranges: [], isFixed: true, held: says };
    };
    if (held !== undefined) return alone(held);
    if (!holding) return this.asked(tree);
    try {
      return await this.asked(tree);
    } catch {
      holding.mark(subUnitId, row, column, formula, unread);
      return alone(unread);
    }
  }

  /** As the engine does it: what the formula refers to is worked out. */
  private async asked(tree: Tree): Promise<Known> {
    const node = this._getTreeNode(tree);
    tree.isDirty = this._includeTree(tree, node);
    const placed = this._getAddressFunctionNodeList(node);
    if (placed.length > 0) tree.addressFunctionNodes = placed;
    const { refOffsetX, refOffsetY, formula } = tree;
    if (!tree.isVirtual) {
      const { row, column, rowCount, columnCount, subUnitId, unitId } = tree;
      this._runtimeService.setCurrent(row, column, rowCount, columnCount, subUnitId, unitId);
      const found = await this._getRangeListByNode({ node, refOffsetX, refOffsetY });
      (tree as FormulaDependencyTree).pushRangeList(found);
    }
    const isSettled = placed.length === 0 && isFixed(formula, node);
    return { formula, ranges: [...tree.rangeList], isFixed: isSettled, held: undefined };
  }

  override dispose(): void {
    super.dispose();
    this.known.clear();
  }
}
