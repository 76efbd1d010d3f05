/** A field for words, or for a day. */
import { Field, Input } from "@fluentui/react-components";

export interface WordFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly hint?: string;
  readonly type?: "text" | "date";
  readonly wrong?: string | undefined;
}

/** A cell holds more, but nobody reads it. */
const mostCharacters = 200;

export function WordField({ label, value, onText, hint, type = "text", wrong }: WordFieldProps) {
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
        maxLength={mostCharacters}
        value={value}
        onChange={(_, typed) => {
          onText(typed.value);
        }}
      />
    </Field>
  );
}
