/**
 * The bench card of a batch on record: what goes in, in which order, how warm and how long, each step with
 * its caution and a box to tick. What is ticked and typed is kept by the browser.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./card.css";
import { Button } from "@fluentui/react-components";
import { useEffect } from "react";
import type { Batches, RecordedBatch } from "../../workbook/planning/read-batches";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { type Keeping, useKeptDraft } from "../drafts/use-kept-draft";
import { useOpening } from "../open-task";
import type { TaskProps } from "../task-props";
import { Cautions } from "../widgets/cautions";
import { PickList } from "../widgets/pick-list";
import { Say } from "../widgets/say";
import { decimalMarkOf, withMark } from "../widgets/typed-number";
import { alikeWords, batchWords, cardOf, nameOf } from "./card";
import { type Action, type Draft, draftFrom, reduce } from "./draft";
import { useBatches } from "./use-batches";
import { Card } from "./view/card";
import { CardDesk } from "./view/desk";

export type CardTaskProps = Pick<TaskProps, "host" | "memory" | "locale">;

const keeping: Keeping<Draft, Action> = {
  task: "card",
  from: draftFrom,
  reduce,
  isTyping: ({ do: what }) => what === "type",
};

/** The one that was opened, by its name or as it was kept; else the latest. */
const chosenIn = ({ rows }: Batches, wanted: string): RecordedBatch | undefined =>
  rows.find((each) => cardOf(each) === wanted) ??
  rows.find((each) => nameOf(each) === wanted && wanted !== "") ??
  rows[0];

export function CardTask({ host, memory, locale }: CardTaskProps) {
  const mark = decimalMarkOf(locale);
  const { found, again } = useBatches(host);
  const { draft, act, isUnkept, held } = useKeptDraft(memory, keeping);
  const opening = useOpening("card");
  const isReady = draft !== undefined;
  useEffect(() => {
    if (opening && isReady) act({ do: "open", batch: opening.about });
  }, [opening, isReady, act]);
  const batch = found.state === "read" && draft ? chosenIn(found.batches, draft.batch) : undefined;
  if (found.state !== "read" || draft === undefined || batch === undefined) {
    return (
      <div className="task">
        <h2>Bench card</h2>
        <div role="status">
          {found.state === "refused" ? <Say tone="check">{found.sentence}</Say> : null}
          {found.state === "none" ? (
            <Say tone="know">No batch is recorded yet. Record one in Batch: its card is here.</Say>
          ) : null}
          {found.state === "looking" || found.state === "read" ? <p>One moment.</p> : null}
        </div>
        {found.state === "refused" || found.state === "none" ? (
          <Button size="large" className="wide" onClick={again}>
            Look again
          </Button>
        ) : null}
      </div>
    );
  }
  const { rows } = found.batches;
  const alike = alikeWords(batch);
  const desk = { host, batch, batches: found.batches, draft, act, mark };
  return (
    <CardDesk.Provider value={{ ...desk, inMark: (text) => withMark(text, mark) }}>
      <HeldElsewhere held={held}>
        <div className="task card">
          <h2>Bench card</h2>
          {isUnkept ? (
            <Say tone="check">
              This browser keeps nothing: ticks are lost when you close the pane.
            </Say>
          ) : null}
          {rows.length > 1 ? (
            <PickList
              label="Batch"
              value={cardOf(batch)}
              options={rows.map((each) => [cardOf(each), batchWords(each)] as const)}
              onPick={(card) => {
                act({ do: "open", batch: card });
              }}
            />
          ) : null}
          {alike === undefined ? null : <Say tone="check">{alike}</Say>}
          <Card key={cardOf(batch)} />
          <Cautions work="mixing" />
        </div>
      </HeldElsewhere>
    </CardDesk.Provider>
  );
}
