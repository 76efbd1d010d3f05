/** From one task of the pane to another, with what it is to be about: from a batch to its card. */
import { createContext, useContext, useEffect, useRef } from "react";

export interface Opening {
  readonly task: string;
  /** A batch's name, a lot's. */
  readonly about: string;
  /** What goes along, by its name there: figures as plain digits with a point. */
  readonly given: Given;
  /** Another each time: the same may be asked for twice. */
  readonly turn: number;
}

export type Given = Readonly<Record<string, string>>;

export type Opens = (task: string, about: string, given?: Given) => void;

/** Undefined where there is no other task to go to. */
export const OpenTask = createContext<Opens | undefined>(undefined);
export const LastOpening = createContext<Opening | undefined>(undefined);

/** @example useOpenTask()?.("card", "B-118") */
export const useOpenTask = (): Opens | undefined => useContext(OpenTask);

/** What this task was last opened for from elsewhere; undefined while it was not. */
export function useOpening(task: string): Opening | undefined {
  const opening = useContext(LastOpening);
  return opening?.task === task ? opening : undefined;
}

/** Does what it was opened for, once each time, as soon as it can. */
export function useOpenedOnce(
  opening: Opening | undefined,
  isReady: boolean,
  work: (opening: Opening) => void,
): void {
  const done = useRef(0);
  useEffect(() => {
    if (opening === undefined || !isReady || done.current === opening.turn) return;
    done.current = opening.turn;
    work(opening);
  });
}
