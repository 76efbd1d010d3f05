/** Settings into the table of My bench at one press: what is written over is said above it, and one undo takes it back. */
import type { Host } from "../../sheet/port";
import { keepBench, planBench } from "../../workbook/planning/bench/plan-bench";
import type { BenchValues } from "../../workbook/tables/bench";
import { PlannedPress } from "../planned/planned-press";

export interface KeepBenchProps {
  readonly host: Host;
  readonly values: BenchValues;
  /** On the button. */
  readonly command: string;
  readonly inMark: (text: string) => string;
  readonly onKept?: () => void;
}

export const KeepBench = ({ host, values, command, inMark, onKept }: KeepBenchProps) => (
  <PlannedPress
    change={{
      key: JSON.stringify(values),
      plan: () => planBench(host, values),
      write: (confirmed, pause) => keepBench(host, values, confirmed, pause),
      written: () => {
        onKept?.();
        return [];
      },
    }}
    command={command}
    busyWords="Writing the settings."
    inMark={inMark}
    undoTakes="takes them back"
  />
);
