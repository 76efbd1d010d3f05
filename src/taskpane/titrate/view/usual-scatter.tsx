/** How this hand scattered before: asked about once, said from then on. */
import { Button } from "@fluentui/react-components";
import { verdictWords } from "../../../core/replicates/verdict-words";
import { Say } from "../../widgets/say";
import { usualQuestion, usualWords } from "../usual/usual-words";
import { useDesk, useMark } from "./desk";

/** The answer is kept; it can be taken back. */
function Answered({ isUsed }: { isUsed: boolean }) {
  const { act } = useDesk();
  return (
    <Button
      onClick={() => {
        act({ do: "pick", picked: { record: isUsed ? "without" : "use" } });
      }}
    >
      {isUsed ? "Do without them" : "Use earlier titrations"}
    </Button>
  );
}

/** By keyboard the hand goes back to the readings: one more press must not take the answer back. */
const backToReadings = (from: Element): void => {
  from.closest(".task")?.querySelector<HTMLElement>(".entry input")?.focus();
};

function Asked() {
  const { act } = useDesk();
  return (
    <>
      <p id="usual-asked">{usualQuestion}</p>
      <div className="acts" role="group" aria-labelledby="usual-asked" data-asked="">
        {(["use", "without"] as const).map((record) => (
          <Button
            key={record}
            size="large"
            {...(record === "without" ? { "data-harmless": "" } : {})}
            onClick={({ currentTarget, detail }) => {
              // no pointer pressed it
              if (detail === 0) backToReadings(currentTarget);
              act({ do: "pick", picked: { record } });
            }}
          >
            {record === "use" ? "Yes" : "No"}
          </Button>
        ))}
      </div>
    </>
  );
}

export function UsualScatter() {
  const { view } = useDesk();
  const inMark = useMark();
  const { record, scattersMore, judgement } = view.working;
  /** The verdict itself says so of readings that agree. */
  const isToSay = scattersMore && judgement?.verdict.includes(verdictWords.more) !== true;
  const answer = view.draft.picked.record;
  if (record === undefined) return null;
  const isFound = record.scatter !== undefined;
  return (
    <section className="usual" aria-label="Your usual scatter">
      <p className="soft">
        {inMark(usualWords(record))}
        {isFound && answer === "without" ? " They are not used." : ""}
      </p>
      {isFound && answer === "" ? <Asked /> : null}
      {isToSay ? <Say tone="check">{verdictWords.more}</Say> : null}
      {isFound && answer !== "" ? <Answered isUsed={answer === "use"} /> : null}
    </section>
  );
}
