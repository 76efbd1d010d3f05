/** What one used to weigh: typed, and answered in sentences. */
import { Say } from "../../widgets/say";
import { formerWords } from "../former";
import { Figure, useDesk, useMark } from "./desk";

export function Former() {
  const { view } = useDesk();
  const inMark = useMark();
  return (
    <section aria-label="Your old amount">
      <Figure field="former" />
      <div role="status">
        {formerWords(view).map(({ tone, sentence }) => (
          <Say key={sentence} tone={tone}>
            {inMark(sentence)}
          </Say>
        ))}
      </div>
    </section>
  );
}
