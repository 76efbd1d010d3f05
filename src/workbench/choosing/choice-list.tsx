/** The list of a cell: arrow keys and Enter, a letter to go to, Escape to leave it; or a press. */
import { type IDisposable, type Nullable } from "@univerjs/core";
import { ComponentManager, SheetCanvasPopManagerService } from "@univerjs/preset-sheets-core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { CellValueType, type ICellData, ICommandService } from "@univerjs/core";
import { useEffect, useRef, useState } from "react";
import type { CellPlace } from "../../sheet/area";
import type { Grid } from "../grid/mount";
import type { Choices } from "./lists";
import { keyTo } from "./list-keys";

const listKey = "titrebook.choices";

interface Open extends Choices {
  readonly at: number;
  choose(index: number): void;
  close(): void;
}

let open: Open | undefined;

function ChoiceList() {
  const [at, setAt] = useState(open?.at ?? 0);
  const list = useRef<HTMLUListElement>(null);
  const words = open?.words ?? [];
  useEffect(() => {
    list.current?.focus();
  }, []);
  useEffect(() => {
    list.current?.children[at]?.scrollIntoView({ block: "nearest" });
  }, [at]);
  useEffect(() => {
    const listener = (event: KeyboardEvent): void => {
      // before the grid, which takes every key
      event.stopImmediatePropagation();
      if (event.key === "Escape" || event.key === "Tab") open?.close();
      else if (event.key === "Enter") open?.choose(at);
      else {
        const to = keyTo(event.key, at, words.map(String));
        if (to === undefined) return;
        setAt(to);
      }
      event.preventDefault();
    };
    window.addEventListener("keydown", listener, { capture: true });
    return () => window.removeEventListener("keydown", listener, { capture: true });
  }, [at, words]);
  return (
    <ul
      className="choice-list"
      role="listbox"
      aria-label="Words to choose from"
      aria-activedescendant={`choice-${String(at)}`}
      tabIndex={-1}
      ref={list}
    >
      {words.map((word, index) => (
        <li
          key={index}
          id={`choice-${String(index)}`}
          role="option"
          aria-selected={index === at}
          onClick={() => open?.choose(index)}
        >
          {String(word)}
        </li>
      ))}
    </ul>
  );
}

function cellOf(word: Choices["words"][number]): ICellData {
  if (typeof word === "boolean")
    return { v: Number(word), t: CellValueType.BOOLEAN, f: null, p: null };
  const isFigure = typeof word === "number" || /^-?\d+(\.\d+)?$/.test(word);
  return isFigure
    ? { v: Number(word), t: CellValueType.NUMBER, f: null, p: null }
    : { v: word, t: CellValueType.STRING, f: null, p: null };
}

let isKnown = false;

/** Opens the list of a cell; what is chosen is typed into it. */
export function chooseFrom(grid: Grid, place: CellPlace): void {
  const found = grid.lists.choices(place);
  if (!found) return;
  open?.close();
  const { injector, cells } = grid;
  const { row, column, sheet } = place;
  if (!isKnown) injector.get(ComponentManager).register(listKey, ChoiceList);
  isKnown = true;
  const held = cells.value(place);
  const close = (): void => {
    open = undefined;
    shown?.dispose();
    grid.focus();
  };
  const choose = (index: number): void => {
    const word = found.words[index];
    close();
    if (word === undefined) return;
    void injector.get(ICommandService).executeCommand(SetRangeValuesCommand.id, {
      unitId: cells.names.unit,
      subUnitId: cells.names.sheetId(sheet),
      range: { startRow: row, endRow: row, startColumn: column, endColumn: column },
      value: cellOf(word),
    });
  };
  open = {
    ...found,
    at: Math.max(
      0,
      found.words.findIndex((word) => word === held),
    ),
    choose,
    close,
  };
  const shown: Nullable<IDisposable> = injector
    .get(SheetCanvasPopManagerService)
    .attachPopupToCell(row, column, {
      componentKey: listKey,
      direction: "vertical",
      onClickOutside: () => {
        if (open) close();
      },
    });
}
