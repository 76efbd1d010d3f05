/** A field for words, or for a day. */
import { Field, Input } from "@fluentui/react-components";
import { useState } from "react";
import { wantedMark } from "./wanted-mark";

export interface WordFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly hint?: string;
  readonly type?: "text" | "date";
  readonly wrong?: string | undefined;
  /** It wants something: Enter comes to it while it is empty, says so, and does not pass over it. */
  readonly isNeeded?: boolean | undefined;
}

/** A cell holds more, but nobody reads it. */
const mostCharacters = 200;

export function WordField(props: WordFieldProps) {
  const { label, value, onText, hint, type = "text", wrong, isNeeded = false } = props;
  const [isAsked, setAsked] = useState(false);
  const isLacking = isNeeded && value.trim() === "";
  const said = wrong ?? (isAsked && isLacking ? `Fill in ${label}: a row needs it.` : undefined);
  return (
    <Field
      label={label}
      {...(hint === undefined ? {} : { hint })}
      {...(said === undefined ? {} : { validationMessage: said })}
    >
      <Input
        size="large"
        type={type}
        autoComplete="off"
        {...wantedMark(isLacking)}
        required={isNeeded}
        input={{
          onInvalid: (event) => {
            event.preventDefault();
            setAsked(true);
          },
        }}
        maxLength={mostCharacters}
        value={value}
        onChange={(_, typed) => {
          setAsked(false);
          onText(typed.value);
        }}
      />
    </Field>
  );
}
