/** Reading and working out one formula: a formula that cannot be read is an error in its own cell. */
import {
  type ArrayValueObject,
  AstTreeBuilder,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  type IDefinedNamesService,
  type IFormulaCurrentConfigService,
  type IFormulaRuntimeService,
  Interpreter,
  type ISuperTableService,
  Lexer,
  LexerNode,
  LexerTreeBuilder,
  NumberValueObject,
} from "@univerjs/engine-formula";
import type { Doubts } from "./doubts";
import type { Failures } from "./failures";
import { tableNames, withPlainHeadings } from "./headings";
import { withPlainNumerals } from "./numerals";

type Run = Parameters<Interpreter["execute"]>[0];
type Found = ReturnType<Interpreter["execute"]>;

/** What the engine's reader forgets to put back after a bracket that is not closed. */
interface Reader {
  _resetTemp(): void;
  _squareBracketState: number;
  _tableBracketState: boolean;
  _openBracketNormalIndexStack: number[];
}

let isDone = false;

/** Once for the page: nothing of one formula is left when the next is read. */
export function readEachFromTheStart(): void {
  if (isDone) return;
  isDone = true;
  const kind = LexerTreeBuilder.prototype as unknown as Reader;
  const reset = kind._resetTemp;
  kind._resetTemp = function (this: Reader): void {
    reset.call(this);
    this._squareBracketState = 0;
    this._tableBracketState = false;
    this._openBracketNormalIndexStack = [];
  };
}

export class SteadyLexer extends Lexer {
  constructor(
    names: IDefinedNamesService,
    builder: LexerTreeBuilder,
    private readonly config: IFormulaCurrentConfigService,
    private readonly tables: ISuperTableService,
    private readonly failures: Failures,
  ) {
    super(names, builder, config);
  }

  override treeBuilder(formula: string, transformSuffix = true) {
    try {
      const tables = [...tableNames(this.tables, this.config.getExecuteUnitId())];
      const plain = withPlainNumerals(withPlainHeadings(formula, tables));
      return super.treeBuilder(plain, transformSuffix);
    } catch {
      this.failures.formula();
      return ErrorType.VALUE as const;
    }
  }
}

/** A formula that is an error and nothing else. */
function broken(): LexerNode {
  const node = new LexerNode();
  node.setToken("R_1");
  node.addChildren(ErrorType.NAME as never);
  return node;
}

export const steadyParser = (failures: Failures) =>
  class SteadyParser extends AstTreeBuilder {
    override parse(lexed: LexerNode) {
      try {
        return super.parse(lexed);
      } catch {
        failures.formula();
        return super.parse(broken());
      }
    }
  };

/** An array, as an array formula has it, of which a cell is empty. */
const holdsEmpty = (found: Found): boolean =>
  found.isArray() &&
  (found as ArrayValueObject)
    .getArrayValue()
    .some((row) => row.some((cell) => !cell || cell.isNull()));

/**
 * Or a part of one: a reference, asked before any round what cells it is, or the inside of a LAMBDA, once
 * for each of its answers. A part gives no cell a result: what is doubted in the cell stays as it was.
 */
const isWholeFormula = ({ node }: Run): boolean => !node?.getParent();

export class SteadyInterpreter extends Interpreter {
  constructor(
    private readonly runtime: IFormulaRuntimeService,
    private readonly failures: Failures,
    private readonly doubts: Doubts,
  ) {
    super(runtime);
  }

  private begin(): void {
    if (!this.failures.isInRound) return;
    const { currentUnitId, currentSubUnitId, currentRow, currentColumn } = this.runtime;
    this.doubts.begin({
      unit: currentUnitId,
      sheet: currentSubUnitId,
      row: currentRow,
      column: currentColumn,
    });
  }

  override execute(run: Run): Found {
    const isWhole = isWholeFormula(run);
    try {
      if (isWhole) this.begin();
      const found = super.execute(run);
      // a cell that refers to an empty one shows 0
      const isEmpty = found.isValueObject() && (found as BaseValueObject).isNull();
      if (isWhole && (isEmpty || holdsEmpty(found))) this.doubts.comesToEmpty();
      return this.failures.isInRound && isEmpty ? NumberValueObject.create(0) : found;
    } catch {
      this.failures.formula();
      return ErrorValueObject.create(ErrorType.VALUE);
    } finally {
      if (isWhole) this.doubts.end();
    }
  }

  override async executeAsync(run: Run): Promise<Found> {
    try {
      return await super.executeAsync(run);
    } catch {
      this.failures.formula();
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  }
}
