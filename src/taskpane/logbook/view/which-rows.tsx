/** Where the headings stand and which rows are left out, when it was guessed wrongly. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import {
  placeText,
  placeTyped,
  rowsText,
  rowsTyped,
} from "../../../adopt/recognising/by-hand/left-out";
import { WordField } from "../../widgets/word-field";
import type { Action } from "../state";
import type { FoundTable } from "../found-table";

interface WhichProps {
  readonly table: FoundTable;
  readonly act: (action: Action) => void;
}

export function WhichRows({ table, act }: WhichProps) {
  const { mapping, guess, cells } = table;
  const isAcross = guess.isAcross === true;
  const { headingRow } = mapping.place;
  const [heading, setHeading] = useState(placeText(headingRow, isAcross));
  const [left, setLeft] = useState(rowsText(mapping.left ?? [], isAcross));
  const row = placeTyped(heading, isAcross);
  const isOnSheet =
    row !== undefined && row >= cells.row && row < cells.row + cells.values.length - 1;
  const one = isAcross ? "column" : "row";
  const example = isAcross ? "C, F-H" : "12, 15-18";
  return (
    <details className="more">
      <summary>Other headings, or {one}s to leave out</summary>
      <WordField
        label={`Headings in ${one}`}
        value={heading}
        onText={setHeading}
        wrong={isOnSheet ? undefined : `One ${one} of the sheet, with ${one}s of figures after it.`}
      />
      {isOnSheet && row !== headingRow ? (
        <Button
          size="large"
          className="wide"
          onClick={() => {
            act({ do: "headings", row });
          }}
        >
          Read the headings there
        </Button>
      ) : null}
      <WordField
        label={`Leave out ${one}s`}
        value={left}
        hint={`Such as ${example}. They are read as if they were empty; nothing is deleted.`}
        wrong={
          rowsTyped(left, isAcross) === undefined ? `Write ${one}s like ${example}.` : undefined
        }
        onText={(text) => {
          setLeft(text);
          const rows = rowsTyped(text, isAcross);
          if (rows) act({ do: "leave", rows });
        }}
      />
    </details>
  );
}
