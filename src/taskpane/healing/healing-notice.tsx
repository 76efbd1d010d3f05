/** A line on top of the pane while cells of ours show #NAME?, with the one button that mends them. */
import "../widgets/widgets.css";
import "./healing.css";
import { Button } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { type Host, isFault } from "../../sheet/port";
import { heal } from "../../workbook/healing/heal";
import { type Search, searchUnanswered } from "../../workbook/healing/search";
import {
  causes,
  foundSentence,
  healedSentence,
  healingFault,
} from "../../workbook/healing/wording";

/** Milliseconds after the pane's start at which is looked: the program needs a while to register. */
const looksAt = [1500, 6000];

/** Milliseconds the program may take to work out what was written again. */
const workedOutAfter = 1500;

const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });

interface Shown {
  readonly says: string;
  readonly causes: readonly string[];
  readonly canAsk: boolean;
}

const shownOf = (search: Search): Shown | undefined => {
  const says = foundSentence(search);
  return says === undefined
    ? undefined
    : { says, causes: causes(search), canAsk: search.mendable.length > 0 };
};

export function HealingNotice({ host, delays = looksAt }: { host: Host; delays?: number[] }) {
  const [shown, setShown] = useState<Shown | undefined>();
  const [isAsking, setAsking] = useState(false);

  useEffect(() => {
    let isHere = true;
    const timers = delays.map((delay) =>
      setTimeout(() => {
        void searchUnanswered(host).then((found) => {
          if (isHere && !isFault(found)) setShown(shownOf(found));
        });
      }, delay),
    );
    return () => {
      isHere = false;
      timers.forEach(clearTimeout);
    };
  }, [host, delays]);

  if (!shown) return null;

  const ask = async (): Promise<void> => {
    setAsking(true);
    const healing = await heal(host, () => pause(workedOutAfter));
    setAsking(false);
    if (isFault(healing)) {
      setShown({ says: healingFault(healing), causes: [], canAsk: true });
      return;
    }
    const { left } = healing;
    setShown({
      says:
        healing.asked > 0 ? healedSentence(healing) : (foundSentence(left) ?? "All answer now."),
      causes: causes(left),
      canAsk: left.mendable.length > 0,
    });
  };

  return (
    <section className="healing" aria-label="Cells that wait" aria-busy={isAsking}>
      <p role="status">{isAsking ? "Asking again. This takes a few seconds." : shown.says}</p>
      {isAsking ? null : shown.causes.map((cause) => <p key={cause}>{cause}</p>)}
      <div className="healing-acts">
        {shown.canAsk ? (
          <Button size="large" appearance="primary" disabled={isAsking} onClick={() => void ask()}>
            Ask again
          </Button>
        ) : null}
        <Button
          size="large"
          disabled={isAsking}
          onClick={() => {
            setShown(undefined);
          }}
        >
          Close
        </Button>
      </div>
    </section>
  );
}
