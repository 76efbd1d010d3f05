/** Back, and on to the next step; Enter goes on too, where it has nothing else to do. */
import "./stepped.css";
import { Button } from "@fluentui/react-components";
import type { FormEvent, ReactNode } from "react";
import { askFor, firstAsked } from "./wanted-field";

export interface WayOnProps<Id extends string> {
  readonly back: Id | undefined;
  readonly next: Id | undefined;
  readonly names: Readonly<Record<Id, string>>;
  readonly onGo: (step: Id) => void;
  /** Why the next step has nothing to offer yet: said in place of its button. */
  readonly waits?: string | undefined;
}

export function WayOn<Id extends string>({ back, next, names, onGo, waits }: WayOnProps<Id>) {
  return (
    <div className="way-on">
      {back === undefined ? null : (
        <Button
          size="large"
          onClick={() => {
            onGo(back);
          }}
        >
          Back
        </Button>
      )}
      {next !== undefined && waits !== undefined ? <p className="soft">{waits}</p> : null}
      {next === undefined || waits !== undefined ? null : (
        <Button
          size="large"
          appearance="primary"
          onClick={({ currentTarget }) => {
            const part = currentTarget.closest(".task");
            const asked = part ? firstAsked(part) : undefined;
            if (asked) askFor(asked);
            else onGo(next);
          }}
        >
          {/* one piece: a button drops the space between two */}
          <span>
            Next: <span className="together">{names[next]}</span>
          </span>
        </Button>
      )}
    </div>
  );
}

export function EnterGoesOn({ onEnter, children }: { onEnter: () => void; children: ReactNode }) {
  const submitted = (event: FormEvent): void => {
    event.preventDefault();
    onEnter();
  };
  return (
    <form onSubmit={submitted} noValidate>
      {children}
      <button type="submit" className="unseen" tabIndex={-1} aria-hidden="true" />
    </form>
  );
}
