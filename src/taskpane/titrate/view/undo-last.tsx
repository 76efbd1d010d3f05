/** Takes back the last act on the readings of this step. */
import { Button } from "@fluentui/react-components";
import type { ReadingList } from "../draft";
import { useDesk } from "./desk";

export function UndoLast({ list, onUndo }: { list: ReadingList; onUndo: () => void }) {
  const { undoes, act } = useDesk();
  if (undoes?.list !== list) return null;
  return (
    <Button
      className="wide"
      onClick={() => {
        onUndo();
        act({ do: "undo" });
      }}
    >
      {undoes.what}
    </Button>
  );
}
