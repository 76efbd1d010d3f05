/** One of a few, side by side, each as large as a gloved finger. */
import { Field, Radio, RadioGroup } from "@fluentui/react-components";
import { wantedMark } from "./wanted-mark";

export interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value | "";
  readonly options: readonly (readonly [value: Value, label: string])[];
  readonly onPick: (value: Value) => void;
  /** Nothing holds until somebody picks, and something must: Enter comes to it. */
  readonly isNeeded?: boolean | undefined;
}

export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, value, options, onPick, isNeeded = false } = props;
  return (
    <Field label={label}>
      <RadioGroup
        className="choices"
        layout="horizontal"
        value={value}
        onChange={(_, picked) => {
          const found = options.find(([each]) => each === picked.value);
          if (found) onPick(found[0]);
        }}
      >
        {options.map(([each, words], place) => (
          <Radio
            key={each}
            value={each}
            label={words}
            {...wantedMark(isNeeded && value === "" && place === 0)}
          />
        ))}
      </RadioGroup>
    </Field>
  );
}
