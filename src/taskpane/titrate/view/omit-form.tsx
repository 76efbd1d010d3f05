/** Why is a titre left out? Without a reason it stays. */
import { Button } from "@fluentui/react-components";
import { type FormEvent, useEffect, useRef, useState } from "react";
import { PickList } from "../../widgets/pick-list";
import { WordField } from "../../widgets/word-field";
import { reasons } from "../tips";

const other = "other";
const options = [
  ["", "Choose a reason"] as const,
  ...reasons.map((reason) => [reason, reason] as const),
  [other, "another reason"] as const,
];

export interface OmitFormProps {
  readonly number: number;
  /** The reason; undefined when it is kept after all. */
  readonly onDone: (reason: string | undefined) => void;
}

export function OmitForm({ number, onDone }: OmitFormProps) {
  const [picked, setPicked] = useState("");
  const [words, setWords] = useState("");
  const [isAsked, setAsked] = useState(false);
  const list = useRef<HTMLSelectElement>(null);
  useEffect(() => {
    list.current?.focus();
  }, []);

  const reason = (picked === other ? words : picked).trim();
  const done = (event: FormEvent): void => {
    event.preventDefault();
    if (reason === "") setAsked(true);
    else onDone(reason);
  };
  return (
    <form
      className="omit full"
      data-asked=""
      onSubmit={done}
      onKeyDown={(event) => {
        if (event.key === "Escape") onDone(undefined);
      }}
    >
      <PickList
        label={`Why leave out titre ${number}?`}
        value={picked}
        options={options}
        onPick={setPicked}
        selectRef={list}
      />
      {picked === other ? <WordField label="Reason" value={words} onText={setWords} /> : null}
      <p className="soft" role="status">
        {isAsked && reason === "" ? "A reason is needed: it is recorded beside the reading." : ""}
      </p>
      <div className="acts">
        <Button type="submit" size="large" appearance="primary">
          Leave out titre {number}
        </Button>
        <Button
          type="button"
          size="large"
          onClick={() => {
            onDone(undefined);
          }}
        >
          Keep it
        </Button>
      </div>
    </form>
  );
}
