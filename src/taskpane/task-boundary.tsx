/** A wall around each task: where one fails, the pane goes on with the others. */
import { Button } from "@fluentui/react-components";
import { Component, type ReactNode } from "react";
import { unexpected } from "./unexpected";
import { Say } from "./widgets/say";

export interface TaskBoundaryProps {
  /** As on its button. */
  readonly name: string;
  readonly children: ReactNode;
}

export class TaskBoundary extends Component<TaskBoundaryProps, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false };

  static getDerivedStateFromError(): { readonly hasFailed: boolean } {
    return { hasFailed: true };
  }

  override componentDidCatch(failure: unknown): void {
    unexpected(failure);
  }

  override render(): ReactNode {
    if (!this.state.hasFailed) return this.props.children;
    return (
      <div className="task" role="alert">
        <Say tone="check">
          {`Something unexpected stopped “${this.props.name}”. The other tasks go on, and what was kept of this one is taken up when it is opened again.`}
        </Say>
        <Button
          size="large"
          className="wide"
          onClick={() => {
            this.setState({ hasFailed: false });
          }}
        >
          Open it again
        </Button>
      </div>
    );
  }
}
