/**
 * The fields one reading is typed in. Enter adds it, and the focus stays for the next one; once enough
 * are added, Enter with nothing typed goes to the next step, or to a question that is still open.
 */
import { Button } from "@fluentui/react-components";
import { type FormEvent, useEffect, useRef, useState } from "react";
import { askFor, openIn } from "../../stepped/wanted-field";
import { mostReadings, type ReadingList } from "../draft";
import { entryFields, entryNames, entryOf, isListDone } from "../readings";
import { Choose, Figure, useDesk } from "./desk";

export interface EntryProps {
  readonly list: ReadingList;
  /** The reading that is being changed; undefined while the next one is typed. */
  readonly editing: number | undefined;
  readonly onEdited: () => void;
  /** Another each time its figure was put in from elsewhere: Enter adds it. */
  readonly putIn?: number;
  /** Enough is added, and Enter was pressed with nothing typed. */
  readonly onDone: () => void;
}

const called: Record<ReadingList, string> = { titres: "titre", blanks: "blank" };

export function ReadingEntry({ list, editing, putIn = 0, onEdited, onDone }: EntryProps) {
  const { view, act } = useDesk();
  const [isAsked, setAsked] = useState(false);
  const first = useRef<HTMLInputElement>(null);
  const last = useRef<HTMLInputElement>(null);
  const { draft, figures } = view;
  const entry = entryOf(draft, figures, list);
  const fields = entryFields(draft, list);
  const names = entryNames[list];
  const count = draft[list].length;

  useEffect(() => {
    if (editing !== undefined || putIn > 0) first.current?.focus();
  }, [editing, putIn]);

  if (editing === undefined && count >= mostReadings[list]) return null;

  const add = (event: FormEvent): void => {
    event.preventDefault();
    // pressed in a field, and not on the button, which says that it adds
    const { activeElement } = document;
    const isEnter = activeElement instanceof HTMLInputElement;
    if (isEnter && editing === undefined && isListDone(draft, list)) {
      const part = activeElement.closest(".task");
      const asked = part ? openIn(part) : undefined;
      if (asked) askFor(asked);
      else onDone();
      return;
    }
    if (entry.kind !== "reading") {
      setAsked(true);
      return;
    }
    setAsked(false);
    const { reading } = entry;
    // who adds one has titrated it
    if (list === "blanks" && draft.picked.blank === "")
      act({ do: "pick", picked: { blank: "titrated" } });
    if (editing === undefined) act({ do: "add", list, reading });
    else act({ do: "change", list, index: editing, reading });
    onEdited();
    // the next start is filled in already: go to its end
    (reading.end === undefined ? first : last).current?.focus();
  };

  return (
    <form className="entry" onSubmit={add} noValidate>
      {count === 0 ? <Choose field="reading" /> : null}
      <div className="side-by-side">
        {fields.map((field, index) => {
          const isHere = entry.kind !== "reading" && entry.field === field;
          const isSaid = isHere && (isAsked || (entry.kind === "wrong" && field === names.end));
          return (
            <Figure
              key={field}
              field={field}
              also={isSaid ? entry.sentence : undefined}
              {...(index === 0 ? { inputRef: first } : {})}
              {...(field === names.end ? { inputRef: last } : {})}
            />
          );
        })}
      </div>
      <Button type="submit" size="large" appearance="primary" className="wide">
        {editing === undefined
          ? `Add ${called[list]} ${count + 1}`
          : `Change ${called[list]} ${editing + 1}`}
      </Button>
      {editing === undefined ? null : (
        <Button
          type="button"
          size="large"
          className="wide"
          onClick={() => {
            act({ do: "clear-entry", list });
            onEdited();
            first.current?.focus();
          }}
        >
          Leave it as it is
        </Button>
      )}
    </form>
  );
}
