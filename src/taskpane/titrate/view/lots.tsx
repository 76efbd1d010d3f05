/** The lots under way, and those recorded lately. */
import { Button } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import type { Kept } from "../drafts/store";
import type { Draft } from "../draft";
import { keptTitrations, titration } from "../titration";
import { standing } from "../readings";

export interface LotsProps {
  readonly kept: readonly Kept[];
  readonly locale: string;
  /** Opened by hand: then its heading takes the focus. */
  readonly takesFocus: boolean;
  readonly onTakeUp: (draft: Draft) => void;
  readonly onDiscard: (draft: Draft) => void;
  readonly onNew: () => void;
}

const nameOf = (draft: Draft): string => draft.words.lot.trim() || "Lot without a name";

const titres = (count: number): string =>
  count === 0 ? "no titre yet" : count === 1 ? "one titre" : `${count} titres`;

function when(keptAt: number, locale: string): string {
  const style = { dateStyle: "medium", timeStyle: "short" } as const;
  return new Intl.DateTimeFormat(locale, style).format(keptAt);
}

function Lot({
  draft,
  keptAt,
  locale,
  onTakeUp,
  onDiscard,
}: Kept & Omit<LotsProps, "kept" | "takesFocus">) {
  // "kept" once it was asked and kept: the focus goes back to where it came from
  const [asking, setAsking] = useState<"no" | "yes" | "kept">("no");
  const name = nameOf(draft);
  return (
    <li className="lot">
      <strong className="lot-name">{name}</strong>
      <span className="soft full">
        {draft.isRecorded ? "Recorded" : `At ${titration.steps[draft.step]}`},{" "}
        {titres(standing(draft).length)}. {when(keptAt, locale)}
      </span>
      <div className="acts">
        <Button
          size="large"
          aria-label={`${draft.isRecorded ? "Open" : "Go on with"} ${name}`}
          onClick={() => {
            onTakeUp(draft);
          }}
        >
          {draft.isRecorded ? "Open" : "Go on"}
        </Button>
        {asking === "yes" ? (
          <>
            <Button
              size="large"
              aria-label={`Discard ${name} for good`}
              onClick={() => {
                onDiscard(draft);
              }}
            >
              Discard for good
            </Button>
            <Button
              size="large"
              aria-label={`Keep ${name}`}
              autoFocus
              onClick={() => {
                setAsking("kept");
              }}
            >
              Keep
            </Button>
          </>
        ) : (
          <Button
            size="large"
            aria-label={`Discard ${name}`}
            autoFocus={asking === "kept"}
            onClick={() => {
              setAsking("yes");
            }}
          >
            Discard
          </Button>
        )}
      </div>
    </li>
  );
}

export function Lots(props: LotsProps) {
  const { kept, onNew, takesFocus } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (takesFocus) heading.current?.focus();
  }, [takesFocus]);
  const underWay = kept.filter(({ draft }) => !draft.isRecorded);
  const recorded = kept.filter(({ draft }) => draft.isRecorded);
  const list = (title: string, some: readonly Kept[]) =>
    some.length === 0 ? null : (
      <section aria-label={title}>
        <h3>{title}</h3>
        <ul className="lots">
          {some.map((each) => (
            <Lot
              key={each.draft.id}
              {...props}
              {...each}
              onDiscard={(draft) => {
                props.onDiscard(draft);
                heading.current?.focus();
              }}
            />
          ))}
        </ul>
      </section>
    );
  return (
    <div className="task titrate">
      <h2 ref={heading} tabIndex={-1}>
        {keptTitrations}
      </h2>
      <Button size="large" appearance="primary" className="wide" onClick={onNew}>
        New titration
      </Button>
      {list("Under way", underWay)}
      {list("Recorded lately", recorded)}
    </div>
  );
}
