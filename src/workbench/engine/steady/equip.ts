/** Puts what is ours into the embedded engine, before its first workbook is opened. */
import { Plugin, type Univer } from "@univerjs/core";
import {
  AstTreeBuilder,
  ICalculateFormulaService,
  IDefinedNamesService,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  IFunctionService,
  Interpreter,
  ISuperTableService,
  Lexer,
  LexerTreeBuilder,
} from "@univerjs/engine-formula";
import { onDoubt } from "../standard/doubt";
import type { Holding } from "../../holding/holding";
import { rememberWhatFormulasRead } from "../remember";
import { protectArrays } from "./arrays";
import { steadyCalculation } from "./calculating";
import { Doubts } from "./doubts";
import { Failures } from "./failures";
import { SteadyFunctions } from "./functions";
import { SteadyTables } from "./headings";
import { keepByWholeText } from "./kept";
import { protectReferences } from "./references";
import { readEachFromTheStart, SteadyInterpreter, SteadyLexer, steadyParser } from "./run-formula";

/** What is known of the working out, beside its results. */
export interface Working {
  readonly failures: Failures;
  readonly doubts: Doubts;
}

/** @param holding says which formulas are not to be worked out; without it, all are */
export function equipEngine(univer: Univer, holding?: Holding): Working {
  const failures = new Failures();
  const doubts = new Doubts();
  onDoubt(doubts);
  const injector = univer.__getInjector();
  protectArrays();
  protectReferences();
  keepByWholeText();
  readEachFromTheStart();
  univer.registerPlugin(
    class extends Plugin {
      static override pluginName = "TITREBOOK_STEADY";
      protected override _injector = injector;

      override onStarting(): void {
        injector.replace([IFunctionService, { useFactory: () => new SteadyFunctions(failures) }]);
        injector.replace([ISuperTableService, { useClass: SteadyTables }]);
        injector.replace([
          Lexer,
          {
            useFactory: (
              names: IDefinedNamesService,
              builder: LexerTreeBuilder,
              config: IFormulaCurrentConfigService,
              tables: ISuperTableService,
            ) => new SteadyLexer(names, builder, config, tables, failures),
            deps: [
              IDefinedNamesService,
              LexerTreeBuilder,
              IFormulaCurrentConfigService,
              ISuperTableService,
            ],
          },
        ]);
        injector.replace([AstTreeBuilder, { useClass: steadyParser(failures) }]);
        injector.replace([
          Interpreter,
          {
            useFactory: (runtime: IFormulaRuntimeService) =>
              new SteadyInterpreter(runtime, failures, doubts),
            deps: [IFormulaRuntimeService],
          },
        ]);
        injector.replace([
          ICalculateFormulaService,
          { useClass: steadyCalculation(failures, doubts) },
        ]);
      }
    },
  );
  rememberWhatFormulasRead(univer, holding);
  if (holding) holding.doubted.results = doubts;
  return { failures, doubts };
}
