/**
 * The frame of a stepped task whose draft the browser keeps until it is recorded: who may write it, whether
 * it is kept at all, what it is of, the way to the next one, its steps.
 */
import type { ReactNode } from "react";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { NotSaved, recordFirst } from "../drafts/not-saved";
import type { KeptDraft } from "../drafts/use-kept-draft";
import { TaskShell, type TaskShellProps } from "./task-shell";

export interface KeptTaskProps<Step extends string>
  extends TaskShellProps<Step>, Pick<KeptDraft<unknown, unknown>, "held" | "isUnkept"> {
  /** "B-118"; the task's name while it is of nothing. */
  readonly title: string;
  /** What begins the next one. */
  readonly next: ReactNode;
}

export function KeptTask<Step extends string>(props: KeptTaskProps<Step>) {
  const { held, isUnkept, title, next, top, ...shell } = props;
  return (
    <HeldElsewhere held={held}>
      <TaskShell<Step>
        {...shell}
        top={
          <>
            {isUnkept ? <NotSaved instead={recordFirst} /> : null}
            <header className="task-top">
              <p className="task-of">{title}</p>
              {next}
            </header>
            {top}
          </>
        }
      />
    </HeldElsewhere>
  );
}
