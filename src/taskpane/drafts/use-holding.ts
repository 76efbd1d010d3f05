/** Who writes a draft: this tab, or another one that has it open. */
import { useCallback, useEffect, useRef, useState } from "react";
import { Holding, type Standing } from "./holding";

export interface Held {
  readonly standing: Standing;
  /** What is typed here is kept. */
  readonly isWriter: boolean;
  readonly takeOver: () => void;
}

/**
 * @param name of the draft, one for all tabs; undefined while there is none
 * @param writeDown keeps what was typed last
 * @param readAgain shows the draft as it was kept, when it comes over from another tab
 */
export function useHolding(
  name: string | undefined,
  writeDown: () => Promise<void>,
  readAgain: () => Promise<void>,
): Held {
  const [standing, setStanding] = useState<Standing>("asking");
  const holding = useRef<Holding | undefined>(undefined);
  const work = useRef({ writeDown, readAgain });
  work.current = { writeDown, readAgain };

  useEffect(() => {
    setStanding("asking");
    if (name === undefined) return undefined;
    let before: Standing = "asking";
    let isCurrent = true;
    const told = async (now: Standing): Promise<void> => {
      const isGained = now === "writes" && before !== "asking";
      before = now;
      if (isGained) await work.current.readAgain().catch(() => undefined);
      if (isCurrent && before === now) setStanding(now);
    };
    const made = new Holding(
      `titrebook/${name}`,
      (now) => void told(now),
      () => work.current.writeDown(),
    );
    holding.current = made;
    return () => {
      isCurrent = false;
      holding.current = undefined;
      made.end();
    };
  }, [name]);

  const takeOver = useCallback(() => void holding.current?.takeOver(), []);
  return { standing, isWriter: standing === "asking" || standing === "writes", takeOver };
}
