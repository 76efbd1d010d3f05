/** How long must the colour stay? Fifteen seconds or thirty, each with the standards that say so. */
import { Button } from "@fluentui/react-components";
import { type RefObject, useEffect, useRef, useState } from "react";
import { endPoints } from "../../../core/reference/end-points";
import { idle, left, runTimer, type Timer, timerSaid } from "../timer";
import { useDesk } from "./desk";

const now = (): number => performance.now();

/**
 * The space bar works wherever a space means nothing else: in the titration outside its fields, and in
 * its number fields. What is typed into the spreadsheet beside the pane is none of ours.
 */
function meansPause(event: KeyboardEvent, timer: HTMLElement | null): boolean {
  const { target } = event;
  const task = timer?.closest<HTMLElement>(".titrate");
  if (!task || task.offsetParent === null || !(target instanceof HTMLElement)) return false;
  if (event.key !== " " || event.ctrlKey || event.altKey || event.metaKey) return false;
  if (target !== document.body && !task.contains(target)) return false;
  if (target instanceof HTMLInputElement) return "number" in target.dataset;
  return target.closest("button, select, textarea, summary, a, [role=radio]") === null;
}

interface Running {
  readonly timer: Timer;
  readonly remaining: number;
  readonly start: (seconds: number) => void;
  readonly toggle: () => void;
  readonly clear: () => void;
}

function useTimer(usual: number | undefined, place: RefObject<HTMLElement>): Running {
  const [timer, setTimer] = useState<Timer>(idle);
  const [, redraw] = useState(0);
  const toggle = (): void => {
    setTimer((was) => runTimer(was, { do: "toggle", seconds: usual, now: now() }));
  };
  useEffect(() => {
    if (timer.state !== "running") return undefined;
    const ticking = setInterval(() => {
      setTimer((was) => runTimer(was, { do: "tick", now: now() }));
      redraw((count) => count + 1);
    }, 200);
    return () => {
      clearInterval(ticking);
    };
  }, [timer.state]);
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (event.repeat || !meansPause(event, place.current)) return;
      event.preventDefault();
      setTimer((was) => runTimer(was, { do: "toggle", seconds: usual, now: now() }));
    };
    document.addEventListener("keydown", pressed);
    return () => {
      document.removeEventListener("keydown", pressed);
    };
  }, [usual, place]);
  return {
    timer,
    remaining: left(timer, now()),
    start: (seconds) => {
      setTimer((was) => runTimer(was, { do: "start", seconds, now: now() }));
    },
    toggle,
    clear: () => {
      setTimer(idle);
    },
  };
}

function Countdown({ timer, remaining }: { timer: Timer; remaining: number }) {
  if (timer.state === "idle") return null;
  const share = timer.state === "over" ? 0 : remaining / (timer.seconds * 1000);
  return (
    <div className="countdown">
      <div className="countdown-pink" style={{ width: `${(share * 100).toFixed(1)}%` }} />
      <span role="timer">
        {timer.state === "over" ? "Over" : `${Math.ceil(remaining / 1000)} s`}
        {timer.state === "paused" ? ", paused" : ""}
      </span>
    </div>
  );
}

export function EndPointTimer() {
  const { view, act } = useDesk();
  const { seconds } = view.draft.picked;
  const place = useRef<HTMLElement>(null);
  const { timer, remaining, start, toggle, clear } = useTimer(
    seconds === "" ? undefined : Number(seconds),
    place,
  );
  return (
    <section ref={place} className="timer" aria-label="End-point timer">
      <p className="timer-title">Start timer</p>
      <div className="acts">
        {endPoints.map((point) => (
          <Button
            key={point.seconds}
            size="large"
            className="end-point"
            aria-pressed={seconds === String(point.seconds)}
            onClick={() => {
              act({ do: "pick", picked: { seconds: `${point.seconds}` } });
              start(point.seconds);
            }}
          >
            <span>
              <strong>{point.seconds} s</strong>
              <span className="asked">{point.asked}</span>
            </span>
          </Button>
        ))}
      </div>
      <Countdown timer={timer} remaining={remaining} />
      {timer.state === "running" || timer.state === "paused" ? (
        <div className="acts">
          <Button size="large" onClick={toggle}>
            {timer.state === "running" ? "Pause" : "Go on"}
          </Button>
          <Button size="large" onClick={clear}>
            Stop
          </Button>
        </div>
      ) : null}
      <p className="timer-said" role="status">
        {timerSaid(timer)}
      </p>
    </section>
  );
}
