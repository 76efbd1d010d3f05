/** Puts our generator of dependencies in place of the engine's own. */
import { IUniverInstanceService, Plugin, type Univer } from "@univerjs/core";
import {
  AstTreeBuilder,
  type FormulaDependencyGenerator,
  IDependencyManagerService,
  IFeatureCalculationManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  Interpreter,
  IOtherFormulaManagerService,
  Lexer,
  LexerTreeBuilder,
} from "@univerjs/engine-formula";
import type { Holding } from "../holding/holding";
import { Remembering } from "./remembering";

/**
 * Before the first workbook is opened.
 * @param holding says which formulas are not to be worked out; without it, all are
 */
export function rememberWhatFormulasRead(univer: Univer, holding?: Holding): void {
  const injector = univer.__getInjector();
  univer.registerPlugin(
    class extends Plugin {
      static override pluginName = "TITREBOOK_REMEMBERING";
      protected override _injector = injector;

      override onStarting(): void {
        injector.replace([
          IFormulaDependencyGenerator,
          {
            useFactory: (...parts: ConstructorParameters<typeof FormulaDependencyGenerator>) => {
              const made = new Remembering(...parts);
              made.holding = holding;
              return made;
            },
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
