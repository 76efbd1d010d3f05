/** A part of the pane that opens at a press, and closes at another. */
import { Button } from "@fluentui/react-components";
import { type ReactNode, useState } from "react";
import { PartHeading } from "../stepped/part-heading";

export interface OnRequestProps {
  /** What opens it, and its heading then. */
  readonly words: string;
  readonly closeWords: string;
  readonly children: (close: () => void) => ReactNode;
}

export function OnRequest({ words, closeWords, children }: OnRequestProps) {
  const [isOpen, setOpen] = useState(false);
  if (!isOpen) {
    return (
      // a block of its own: what follows it in a form must not stand beside it
      <div>
        <Button
          size="large"
          className="wide"
          onClick={() => {
            setOpen(true);
          }}
        >
          {words}
        </Button>
      </div>
    );
  }
  const close = (): void => {
    setOpen(false);
  };
  return (
    <section>
      <PartHeading>{words}</PartHeading>
      {children(close)}
      <Button size="large" className="wide" onClick={close}>
        {closeWords}
      </Button>
    </section>
  );
}
