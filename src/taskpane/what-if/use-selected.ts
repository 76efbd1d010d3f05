/** The selected cell of the spreadsheet, as it moves. */
import { useEffect, useState } from "react";
import { type Block, type Host, isFault } from "../../sheet/port";

/** @param isFollowed false: it stays as it was last seen */
export function useSelected(host: Host, isFollowed: boolean): Block | undefined {
  const [block, setBlock] = useState<Block | undefined>();
  useEffect(() => {
    if (!isFollowed) return undefined;
    let isCurrent = true;
    const look = (): void => {
      host.read([{ ask: "selection" }]).then(
        (found) => {
          if (!isCurrent || isFault(found)) return;
          const [cells] = found;
          if (cells?.kind === "cells") setBlock(cells.block);
        },
        () => undefined,
      );
    };
    look();
    const stop = host.watch(({ event }) => {
      if (event !== "change") look();
    });
    return () => {
      isCurrent = false;
      stop();
    };
  }, [host, isFollowed]);
  return block;
}
