/** From one task of the pane to another, with what it is to be about: from a batch to its card. */
import { createContext, useContext } from "react";

export interface Opening {
  readonly task: string;
  /** A batch's name, a lot's. */
  readonly about: string;
  /** Another each time: the same may be asked for twice. */
  readonly turn: number;
}

export type Opens = (task: string, about: string) => void;

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
