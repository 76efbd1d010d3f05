/**
 * The embedded engine asks every formula of a workbook anew what it reads, at every change of one cell,
 * and notes each block it reads once more: a change took the longer, the more formulas there are and the
 * more changes came before. Here what a formula reads is kept for as long as only cells change.
 */
import { type IUnitRange, Plugin, type Univer, IUniverInstanceService } from "@univerjs/core";
import {
  AstTreeBuilder,
  FormulaDependencyGenerator,
  type FormulaDependencyTree,
  type FormulaDependencyTreeVirtual,
  IDependencyManagerService,
  IFeatureCalculationManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  type IFormulaData,
  Interpreter,
  IOtherFormulaManagerService,
  type IUnitData,
  Lexer,
  LexerTreeBuilder,
  type IOtherFormulaData,
} from "@univerjs/engine-formula";

type Tree = FormulaDependencyTree | FormulaDependencyTreeVirtual;

/** As much of a parsed formula as is looked at here. */
interface Parsed {
  isForcedCalculateFunction(): boolean;
  getChildren(): Parsed[];
}

/** What a formula was found to read. */
interface Known {
  readonly formula: string;
  readonly ranges: readonly IUnitRange[];
  /** It reads the same until it is written anew: no table, no spilled block, nothing worked out. */
  readonly isFixed: boolean;
}

/** What may stand for other cells although the formula stays as it is. */
const movable = /[[#@]/;

/** Does it hold a function that has another answer each time? */
const isVolatile = (node: Parsed): boolean =>
  node.isForcedCalculateFunction() || node.getChildren().some(isVolatile);

/** A formula that is known need not be parsed to be asked whether it was changed. */
const unparsed = null as never;

const isNone = (map: object | undefined | null): boolean =>
  map === undefined || map === null || Object.keys(map).length === 0;

const isSame = (some: readonly IUnitRange[], others: readonly IUnitRange[]): boolean =>
  some.length === others.length &&
  some.every(({ unitId, sheetId, range }, at) => {
    const other = others[at];
    return (
      other?.unitId === unitId &&
      other.sheetId === sheetId &&
      other.range.startRow === range.startRow &&
      other.range.startColumn === range.startColumn &&
      other.range.endRow === range.endRow &&
      other.range.endColumn === range.endColumn
    );
  });

/** Formulas read in one go while a whole workbook is opened: some 40 ms, then the page has its turn. */
const atOnce = 2000;

class Remembering extends FormulaDependencyGenerator {
  /** By the engine's number of the cell's formula: a cell whose formula is changed gets another. */
  private known = new Map<number, Known>();
  private surroundings = "";

  protected override async _generateTreeList(
    formulas: IFormulaData,
    others: IOtherFormulaData,
    units: IUnitData,
  ): Promise<Tree[]> {
    const isWhole = this._currentConfigService.isForceCalculate();
    if (isWhole) this._dependencyManagerService.reset();
    if (this.hasMoved(units) || isWhole) this.known.clear();
    const trees: Tree[] = [];
    this._registerFormulas(Object.keys(formulas), formulas, units, trees);
    this._registerOtherFormulas(others, Object.keys(others), trees);
    this._registerFeatureFormulas(trees as FormulaDependencyTree[]);
    const known = new Map<number, Known>();
    for (const [at, tree] of trees.entries()) {
      if (!tree.formula) continue;
      const before = this.known.get(tree.treeId);
      const now = this.recalled(tree, before) ?? (await this.asked(tree));
      known.set(tree.treeId, now);
      // what stands in the engine's index already is not put there again
      if (before && isSame(before.ranges, now.ranges)) tree.isCache = true;
      if (isWhole && at % atOnce === atOnce - 1) await new Promise((soon) => setTimeout(soon));
    }
    for (const tree of trees) {
      if (!tree.isCache) this._dependencyManagerService.addDependencyRTreeCache(tree);
    }
    this.known = known;
    if (trees.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0)) {
      await this._calculateListByFunctionRefNode(trees);
    }
    return trees;
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
    tree.isDirty = this._includeTree(tree, unparsed);
    (tree as FormulaDependencyTree).pushRangeList([...before.ranges]);
    return before;
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
    const isFixed = placed.length === 0 && !movable.test(formula) && !isVolatile(node);
    return { formula, ranges: [...tree.rangeList], isFixed };
  }

  override dispose(): void {
    super.dispose();
    this.known.clear();
  }
}

/** Puts it in place of the engine's own, before the first workbook is opened. */
export function rememberWhatFormulasRead(univer: Univer): void {
  const injector = univer.__getInjector();
  univer.registerPlugin(
    class extends Plugin {
      static override pluginName = "TITREBOOK_REMEMBERING";
      protected override _injector = injector;

      override onStarting(): void {
        injector.replace([
          IFormulaDependencyGenerator,
          {
            useFactory: (...parts: ConstructorParameters<typeof FormulaDependencyGenerator>) =>
              new Remembering(...parts),
            deps: [
              IFormulaCurrentConfigService,
              IFormulaRuntimeService,
              IOtherFormulaManagerService,
              IFeatureCalculationManagerService,
              IUniverInstanceService,
              Interpreter,
              AstTreeBuilder,
              Lexer,
              IDependencyManagerService,
              LexerTreeBuilder,
            ],
          },
        ]);
      }
    },
  );
}
