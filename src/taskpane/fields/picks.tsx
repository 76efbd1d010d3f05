/** The three lists that more than one task asks by: base, unit, kind of oil. */
import type { Base } from "../../core/reference/bases";
import { PickList } from "../widgets/pick-list";
import { baseChoices } from "./bases";
import { oilChoices } from "./oils";
import { unitChoices, type UnitId } from "./units";

export interface PickProps<Value extends string> {
  readonly value: Value;
  readonly onPick: (value: Value) => void;
}

export const BasePick = (props: PickProps<Base["name"]>) => (
  <PickList label="Base" options={baseChoices} {...props} />
);

export const UnitPick = (props: PickProps<UnitId>) => (
  <PickList label="Unit" options={unitChoices} {...props} />
);

export const OilPick = (props: PickProps<string>) => (
  <PickList label="Kind of oil" options={oilChoices} {...props} />
);
