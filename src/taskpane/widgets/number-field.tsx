/**
 * A field for one number: its unit beside it, and a sentence as soon as it is wrong. The focus stays
 * where it is. While more digits may still put it right, the sentence waits for a pause in typing.
 */
import { Field, Input } from "@fluentui/react-components";
import { type Ref, useEffect, useState } from "react";
import { asRef } from "./as-ref";
import { aroundFigure, Unit } from "./field-parts";
import { wantedMark } from "./wanted-mark";
import type { Judged, NumberFieldFact } from "./judged";

const pause = 700;

/** Has this text been left alone for a while? */
function useSettled(text: string): boolean {
  const [settled, setSettled] = useState(text);
  useEffect(() => {
    const timer = setTimeout(() => {
      setSettled(text);
    }, pause);
    return () => {
      clearTimeout(timer);
    };
  }, [text]);
  return settled === text;
}

export interface NumberFieldProps {
  readonly fact: NumberFieldFact;
  readonly text: string;
  readonly judged: Judged;
  readonly onText: (text: string) => void;
  /** Something else that is wrong with it: missing when it was asked for, or at odds with another. */
  readonly also?: string | undefined;
  readonly inputRef?: Ref<HTMLInputElement>;
}

export function NumberField({ fact, text, judged, onText, also, inputRef }: NumberFieldProps) {
  const isSettled = useSettled(text);
  const [isLeft, setLeft] = useState(true);
  const isTyping = !isSettled && !isLeft;
  const wrong =
    judged.kind === "wrong" && !(judged.mayBecomeRight && isTyping) ? judged.sentence : also;
  return (
    <Field {...aroundFigure(fact, wrong)}>
      <Input
        ref={asRef(inputRef)}
        size="large"
        inputMode="decimal"
        autoComplete="off"
        data-number=""
        {...wantedMark(judged.kind !== "figure" && fact.isOptional !== true)}
        value={text}
        onChange={(_, { value }) => {
          setLeft(false);
          onText(value);
        }}
        onBlur={() => {
          setLeft(true);
        }}
        contentAfter={<Unit unit={fact.unit} />}
      />
    </Field>
  );
}
