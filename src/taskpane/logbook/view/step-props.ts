/** What every step of the task is given. */
import type { Host } from "../../../sheet/port";
import type { DecimalMark } from "../../widgets/typed-number";
import type { Action, LogbookState } from "../state";

export interface StepProps {
  readonly host: Host;
  readonly state: LogbookState;
  readonly act: (action: Action) => void;
  readonly mark: DecimalMark;
  readonly inMark: (text: string) => string;
}
