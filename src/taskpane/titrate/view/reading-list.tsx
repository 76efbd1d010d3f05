/** The readings taken. Each can be changed; a titre can be left out, with a reason, and put back. */
import { Button } from "@fluentui/react-components";
import { useRef } from "react";
import type { Mark } from "../../../core/replicates/judgement";
import { asRef } from "../../widgets/as-ref";
import type { Reading, ReadingList } from "../draft";
import { useDesk, useMark } from "./desk";
import { OmitForm } from "./omit-form";

export interface ReadingListProps {
  readonly list: ReadingList;
  readonly omitting: number | undefined;
  readonly onEdit: (index: number) => void;
  readonly onOmit: (index: number | undefined) => void;
}

const names: Record<ReadingList, string> = { titres: "Titre", blanks: "Blank" };

function Figures({ reading }: { reading: Reading }) {
  const inMark = useMark();
  const { used, start, end, mass, omitted } = reading;
  return (
    <span className="reading-figures">
      <strong className={omitted === undefined ? "" : "is-struck"}>{inMark(used)} mL</strong>
      {start === undefined || end === undefined ? null : (
        <span className="soft">
          {inMark(start)} to {inMark(end)}
        </span>
      )}
      {mass === undefined ? null : <span className="soft">on {inMark(mass)} g</span>}
    </span>
  );
}

const flags: Partial<Record<Mark, string>> = { suspect: "Apart", apart: "Apart" };

/** Of what agrees nothing is said. */
function Flag({ mark }: { mark: Mark | undefined }) {
  const word = mark && flags[mark];
  return word ? <span className="flag">{word}</span> : null;
}

export function Readings({ list, omitting, onEdit, onOmit }: ReadingListProps) {
  const { view, act } = useDesk();
  /** The button that omits a reading, and then puts it back: the focus returns to it. */
  const omitButtons = useRef<(HTMLButtonElement | null)[]>([]);
  const readings = view.draft[list];
  const marks = list === "titres" ? view.working.judgement?.marks : undefined;
  if (readings.length === 0) return null;
  return (
    <ol className="readings" aria-label={`${names[list]}s taken`}>
      {readings.map((reading, index) => {
        const number = index + 1;
        const name = `${names[list]} ${number}`;
        const isOmitted = reading.omitted !== undefined;
        return (
          <li key={number} className={isOmitted ? "is-omitted" : ""}>
            <span className="reading-name">{name}</span>
            <Figures reading={reading} />
            <Flag mark={marks?.get(number)} />
            {isOmitted ? <span className="soft full">Left out: {reading.omitted}</span> : null}
            <span className="reading-acts">
              <Button
                aria-label={`Change ${name}`}
                onClick={() => {
                  act({ do: "edit", list, index });
                  onEdit(index);
                }}
              >
                Change
              </Button>
              {list === "blanks" ? (
                <Button
                  aria-label={`Leave out ${name}`}
                  onClick={() => {
                    act({ do: "remove-blank", index });
                  }}
                >
                  Leave out
                </Button>
              ) : isOmitted ? (
                <Button
                  ref={asRef<HTMLButtonElement>((button) => {
                    omitButtons.current[index] = button;
                  })}
                  aria-label={`Put back ${name}`}
                  onClick={() => {
                    act({ do: "put-back", index });
                  }}
                >
                  Put back
                </Button>
              ) : (
                <Button
                  ref={asRef<HTMLButtonElement>((button) => {
                    omitButtons.current[index] = button;
                  })}
                  aria-label={`Leave out ${name}`}
                  aria-expanded={omitting === index}
                  onClick={() => {
                    onOmit(omitting === index ? undefined : index);
                  }}
                >
                  Leave out
                </Button>
              )}
            </span>
            {omitting === index && !isOmitted ? (
              <OmitForm
                number={number}
                onDone={(reason) => {
                  omitButtons.current[index]?.focus();
                  if (reason !== undefined) act({ do: "omit", index, reason });
                  onOmit(undefined);
                }}
              />
            ) : null}
          </li>
        );
      })}
    </ol>
  );
}
