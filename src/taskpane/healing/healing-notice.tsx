/** A line on top of the pane while cells of ours show #NAME?, with the one button that mends them. */
import "../widgets/widgets.css";
import "./healing.css";
import { Button } from "@fluentui/react-components";
import { useCallback, useEffect, useState } from "react";
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

/** Milliseconds after a recalculation at which is looked again, while cells wait. */
const looksAgainAfter = 1000;

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

  const isWaiting = shown !== undefined && (shown.canAsk || shown.causes.length > 0);
  const look = useCallback(async (): Promise<Shown | undefined | "not known"> => {
    const found = await searchUnanswered(host);
    return isFault(found) ? "not known" : shownOf(found);
  }, [host]);

  useEffect(() => {
    let isHere = true;
    const timers = delays.map((delay) =>
      setTimeout(() => {
        void look().then((found) => {
          if (isHere && found !== "not known") setShown(found);
        });
      }, delay),
    );
    return () => {
      isHere = false;
      timers.forEach(clearTimeout);
    };
  }, [look, delays]);

  // what is said here goes once the cells answer, whatever made them
  useEffect(() => {
    if (!isWaiting || isAsking) return undefined;
    let isHere = true;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = host.watch(({ event }) => {
      if (event === "selection") return;
      clearTimeout(timer);
      timer = setTimeout(() => {
        void look().then((found) => {
          if (isHere && found === undefined) setShown(undefined);
        });
      }, looksAgainAfter);
    });
    return () => {
      isHere = false;
      clearTimeout(timer);
      stop();
    };
  }, [host, isWaiting, isAsking, look]);

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
