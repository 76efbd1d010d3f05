/** Something read from the workbook, and read again whenever the workbook changes. */
import { useCallback, useEffect, useState } from "react";
import type { Host } from "../../sheet/port";

/** A burst of changes is read once. */
const pause = 500;

export interface Read<Found> {
  readonly found: Found;
  /** As if nothing had been read yet. */
  readonly again: () => void;
}

/** What is shown stays on screen while a workbook that is being edited cannot be read. */
export const keepRead = <Found extends { readonly state: string }>(
  found: Found,
  was: Found,
): Found => (found.state === "refused" && was.state === "read" ? was : found);

/** The same, where what cannot be read now is undefined. */
export const keepKnown = <Found>(
  found: Found | undefined,
  was: Found | undefined,
): Found | undefined => found ?? was;

/**
 * @param look the same function at every call
 * @param first what holds until something was read
 * @param next what is shown once something was read, after what was shown; the same function at every call
 */
export function useRead<Found>(
  host: Host,
  look: (host: Host) => Promise<Found>,
  first: Found,
  next: (found: Found, was: Found) => Found,
): Read<Found> {
  const [found, setFound] = useState<Found>(first);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let isCurrent = true;
    void look(host).then((read) => {
      if (isCurrent) setFound((was) => next(read, was));
    });
    return () => {
      isCurrent = false;
    };
  }, [host, turn, look, next]);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = host.watch(({ event }) => {
      if (event !== "change" && event !== "calculation") return;
      clearTimeout(timer);
      timer = setTimeout(() => {
        setTurn((count) => count + 1);
      }, pause);
    });
    return () => {
      clearTimeout(timer);
      stop();
    };
  }, [host]);
  const again = useCallback(() => {
    setFound(first);
    setTurn((count) => count + 1);
  }, [first]);
  return { found, again };
}
