/** A field for words, or for a day. */
import { Field, Input } from "@fluentui/react-components";
import { wantedMark } from "./wanted-mark";

export interface WordFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly hint?: string;
  readonly type?: "text" | "date";
  readonly wrong?: string | undefined;
  /** It wants something: Enter comes to it while it is empty. */
  readonly isNeeded?: boolean | undefined;
}

/** A cell holds more, but nobody reads it. */
const mostCharacters = 200;

export function WordField(props: WordFieldProps) {
  const { label, value, onText, hint, type = "text", wrong, isNeeded = false } = props;
  return (
    <Field
      label={label}
      {...(hint === undefined ? {} : { hint })}
      {...(wrong === undefined ? {} : { validationMessage: wrong })}
    >
      <Input
        size="large"
        type={type}
        autoComplete="off"
        {...wantedMark(isNeeded && value.trim() === "")}
        maxLength={mostCharacters}
        value={value}
        onChange={(_, typed) => {
          onText(typed.value);
        }}
      />
    </Field>
  );
}
