/** One of many, as the machine's own list: it opens large on a touch screen and works by keyboard. */
import { Field, Select } from "@fluentui/react-components";
import type { Ref } from "react";
import { asRef } from "./as-ref";
import { wantedMark } from "./wanted-mark";

export interface PickListProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, label: string])[];
  readonly onPick: (value: Value) => void;
  /** Stands below, and is heard with the list. */
  readonly hint?: string;
  readonly selectRef?: Ref<HTMLSelectElement>;
  /** One of them is to be chosen: Enter comes to it until then. */
  readonly isNeeded?: boolean | undefined;
}

export function PickList<Value extends string>(props: PickListProps<Value>) {
  const { label, value, options, onPick, hint, selectRef, isNeeded = false } = props;
  return (
    <Field label={label} {...(hint === undefined ? {} : { hint })}>
      <Select
        ref={asRef(selectRef)}
        size="large"
        value={value}
        {...wantedMark(isNeeded && value === "")}
        onChange={(_, picked) => {
          const found = options.find(([each]) => each === picked.value);
          if (found) onPick(found[0]);
        }}
      >
        {options.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </Select>
    </Field>
  );
}
