/**
 * My bench: asked once, kept on a sheet of the workbook. What is typed is kept by the browser; the
 * workbook is written by Keep alone.
 */
import { NotSaved } from "../drafts/not-saved";
import "../widgets/widgets.css";
import "../task.css";
import "./bench.css";
import { Button } from "@fluentui/react-components";
import { useEffect } from "react";
import { benchIds } from "../../workbook/tables/bench";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { type Keeping, useKeptDraft } from "../drafts/use-kept-draft";
import { useOpenedOnce, useOpening } from "../open-task";
import type { TaskProps } from "../task-props";
import { Say } from "../widgets/say";
import { decimalMarkOf, withMark } from "../widgets/typed-number";
import { isChoice, isFigure, isText } from "./bench";
import { BenchForm, DeskProvider } from "./bench-form";
import { type Action, type Draft, draftFrom, isAs, reduce } from "./draft";
import { KeepBench } from "./keep-bench";
import { useBench } from "./use-bench";
import { viewOf } from "./view-of";

const keeping: Keeping<Draft, Action> = {
  task: "bench",
  from: draftFrom,
  reduce,
  isTyping: ({ do: what }) => what === "type",
};

export function BenchTask({ host, memory, locale }: Pick<TaskProps, "host" | "memory" | "locale">) {
  const mark = decimalMarkOf(locale);
  const found = useBench(host);
  const { draft, act, isUnkept, held } = useKeptDraft(memory, keeping);
  const inWorkbook = found.state === "read" ? found.bench : undefined;
  const isKnown = found.state === "read";
  const isTouched = draft?.isTouched ?? true;
  useEffect(() => {
    // what is being typed stays; what nobody touched is what the workbook says
    if (isKnown && !isTouched) act({ do: "follow", values: inWorkbook?.values ?? {}, mark });
  }, [isKnown, isTouched, inWorkbook, mark, act]);
  const opening = useOpening("bench");
  useOpenedOnce(opening, draft !== undefined && isKnown, ({ given }) => {
    for (const id of benchIds) {
      const text = given[id];
      if (text === undefined || text === inWorkbook?.values[id]) continue;
      if (isFigure(id)) act({ do: "type", field: id, text: withMark(text, mark) });
      if (isChoice(id)) act({ do: "pick", picked: { [id]: text } });
      if (isText(id)) act({ do: "write", words: { [id]: text } });
    }
  });
  if (draft === undefined || found.state === "looking") return <p role="status">One moment.</p>;
  const view = viewOf(draft, mark);
  const isSame = inWorkbook !== undefined && isAs(draft, inWorkbook.values, mark);
  const inMark = (text: string): string => withMark(text, mark);
  return (
    <DeskProvider value={{ view, act }}>
      <HeldElsewhere held={held}>
        <div className="task bench">
          <h2>My bench</h2>
          <p>Fill in what you know and leave the rest. Titrate, Batch and What if begin from it.</p>
          {isUnkept ? <NotSaved instead="press Keep for good before you close the pane." /> : null}
          {inWorkbook?.odd.map((sentence) => (
            <Say key={sentence} tone="check">
              {inMark(sentence)}
            </Say>
          ))}
          <BenchForm />
          {view.wants.map((sentence) => (
            <Say key={sentence} tone="check">
              {sentence}
            </Say>
          ))}
          <div role="status">
            {view.values === undefined ? (
              <Say tone="check">A figure above is not right yet: its field says why.</Say>
            ) : isSame && Object.keys(inWorkbook.values).length > 0 ? (
              <Say tone="know">
                Kept on the sheet My bench. Titrate, Batch and What if begin from it. It fills empty
                boxes only.
              </Say>
            ) : !isSame && Object.keys(view.values).length > 0 ? (
              <Say tone="know">Not saved yet: Titrate and Batch do not use it.</Say>
            ) : null}
          </div>
          {view.values === undefined || isSame ? null : (
            <KeepBench
              host={host}
              values={view.values}
              command="Keep for good in the workbook"
              inMark={inMark}
            />
          )}
          {isTouched && inWorkbook !== undefined && !isSame ? (
            <Button
              size="large"
              className="wide"
              onClick={() => {
                act({ do: "follow", values: inWorkbook.values, mark });
              }}
            >
              Undo my changes
            </Button>
          ) : null}
        </div>
      </HeldElsewhere>
    </DeskProvider>
  );
}
