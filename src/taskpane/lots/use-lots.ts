/** The lots on record, read again whenever the workbook changes. */
import { useCallback, useEffect, useState } from "react";
import { type Host, isFault } from "../../sheet/port";
import { faultSentence } from "../../workbook/planning/fault-wording";
import { readLots, type RecordedLot } from "../../workbook/planning/read-lots";

/** A burst of changes is read once. */
const pause = 500;

export type Lots =
  | { readonly state: "looking" }
  | { readonly state: "read"; readonly lots: readonly RecordedLot[] }
  /** There is no table of titrations, or it has no lot. */
  | { readonly state: "none" }
  | { readonly state: "refused"; readonly sentence: string };

const looking: Lots = { state: "looking" };

async function looked(host: Host): Promise<Lots> {
  const found = await readLots(host);
  if (found === undefined) return { state: "none" };
  if (isFault(found)) return { state: "refused", sentence: faultSentence(found) };
  return found.length === 0 ? { state: "none" } : { state: "read", lots: found };
}

export function useLots(host: Host): { readonly lots: Lots; readonly again: () => void } {
  const [lots, setLots] = useState<Lots>(looking);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let isCurrent = true;
    void looked(host).then((found) => {
      // what is shown stays on screen while a workbook that is being edited cannot be read
      if (isCurrent)
        setLots((was) => (found.state === "refused" && was.state === "read" ? was : found));
    });
    return () => {
      isCurrent = false;
    };
  }, [host, turn]);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const stop = host.watch(({ event }) => {
      if (event !== "change") return;
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
    setLots(looking);
    setTurn((count) => count + 1);
  }, []);
  return { lots, again };
}
