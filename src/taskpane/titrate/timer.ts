/**
 * The end-point timer: how long must the colour stay? Pure: the time comes
 * in, so that a paused timer, a sleeping machine and a test all tell the same.
 */
import { counted } from "../../sheet/counted";

export type Timer =
  | { readonly state: "idle" }
  | { readonly state: "running"; readonly seconds: number; readonly endsAt: number }
  | { readonly state: "paused"; readonly seconds: number; readonly left: number }
  | { readonly state: "over"; readonly seconds: number };

export type TimerAction =
  | { readonly do: "start"; readonly seconds: number; readonly now: number }
  /** The space bar: pause, go on, or begin anew. */
  | { readonly do: "toggle"; readonly seconds: number | undefined; readonly now: number }
  | { readonly do: "tick"; readonly now: number }
  | { readonly do: "clear" };

export const idle: Timer = { state: "idle" };

const started = (seconds: number, now: number): Timer => ({
  state: "running",
  seconds,
  endsAt: now + seconds * 1000,
});

/** Milliseconds still to go. */
export function left(timer: Timer, now: number): number {
  switch (timer.state) {
    case "running":
      return Math.max(0, timer.endsAt - now);
    case "paused":
      return timer.left;
    default:
      return 0;
  }
}

export function runTimer(timer: Timer, action: TimerAction): Timer {
  switch (action.do) {
    case "start":
      return started(action.seconds, action.now);
    case "clear":
      return idle;
    case "tick":
      return timer.state === "running" && left(timer, action.now) === 0
        ? { state: "over", seconds: timer.seconds }
        : timer;
    case "toggle":
      if (timer.state === "running") {
        return { state: "paused", seconds: timer.seconds, left: left(timer, action.now) };
      }
      if (timer.state === "paused") {
        return { state: "running", seconds: timer.seconds, endsAt: action.now + timer.left };
      }
      return action.seconds === undefined ? timer : started(action.seconds, action.now);
  }
}

/** What a listener hears: at the start, at a pause, at the end; not at every second. */
export function timerSaid(timer: Timer): string {
  switch (timer.state) {
    case "idle":
      return "";
    case "running":
      return `${timer.seconds} seconds running. Space pauses.`;
    case "paused":
      return `Paused with ${counted(Math.ceil(timer.left / 1000), "second")} left.`;
    case "over":
      return `${timer.seconds} seconds are over. Still pink? Then read the burette.`;
  }
}
