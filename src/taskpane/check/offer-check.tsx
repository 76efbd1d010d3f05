/** The way to "Check this Excel": loaded when it is asked for, since most people never do. */
import { Button } from "@fluentui/react-components";
import { lazy, Suspense, useState } from "react";
import { TaskBoundary } from "../task-boundary";
import type { CheckExcelProps } from "./check-excel";

const CheckExcel = lazy(() => import(/* webpackChunkName: "check" */ "./check-excel"));

export function OfferCheck(given: CheckExcelProps) {
  const [isOpen, setOpen] = useState(false);
  if (isOpen) {
    return (
      <TaskBoundary name="Check this Excel">
        <Suspense fallback={<p role="status">One moment.</p>}>
          <CheckExcel {...given} />
        </Suspense>
      </TaskBoundary>
    );
  }
  return (
    <p className="pane-help">
      <Button
        size="large"
        onClick={() => {
          setOpen(true);
        }}
      >
        Check this Excel
      </Button>
    </p>
  );
}
