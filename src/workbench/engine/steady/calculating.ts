/**
 * One round of working out, from a change to its results. The engine that fails in one never says that
 * the round is over, and everybody waits; and it leaves what it has read to the next round, which may be
 * of another workbook. Here a round always ends, and says so when it ended early.
 */
import {
  CalculateFormulaService,
  CELL_INVERTED_INDEX_CACHE,
  type IFormulaRuntimeService,
} from "@univerjs/engine-formula";
import type { Doubts } from "./doubts";
import type { Failures } from "./failures";
import { forgetWhatWasRead } from "./kept";

type Round = Parameters<CalculateFormulaService["execute"]>[0];

const isNone = (map: object | undefined): boolean =>
  map === undefined || Object.keys(map).length === 0;

export const steadyCalculation = (failures: Failures, doubts: Doubts) =>
  class SteadyCalculation extends CalculateFormulaService {
    override execute(round: Round): Promise<void> {
      const { forceCalculate, dirtyDefinedNameMap, dirtySuperTableMap } = round;
      if (forceCalculate) {
        failures.forget();
        doubts.forget();
      }
      if (forceCalculate || !isNone(dirtyDefinedNameMap) || !isNone(dirtySuperTableMap)) {
        forgetWhatWasRead();
      }
      return super.execute(round);
    }

    protected override async _executeStep(): Promise<true | undefined> {
      failures.isInRound = true;
      try {
        return await super._executeStep();
      } catch {
        forgetWhatWasRead();
        CELL_INVERTED_INDEX_CACHE.clear();
        const { _runtimeService } = this as unknown as { _runtimeService: IFormulaRuntimeService };
        _runtimeService.markedAsStopFunctionsExecuted();
        failures.stopped();
        return true;
      } finally {
        failures.isInRound = false;
      }
    }
  };
