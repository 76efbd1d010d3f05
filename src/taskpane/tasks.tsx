/**
 * The tasks of the pane, in the order a batch goes through them. All but the first are loaded when they
 * are opened, so that the pane itself is there at once.
 */
import { type ComponentType, lazy, type LazyExoticComponent } from "react";
import type { TaskProps } from "./task-props";

export interface Task {
  readonly id: string;
  /** On its button: one or two words. */
  readonly name: string;
  /** All it holds was found in the workbook, and it keeps no draft: it begins anew where the same is opened again. */
  readonly isOfWorkbook: boolean;
  readonly Component: LazyExoticComponent<ComponentType<TaskProps>>;
}

export const tasks: readonly Task[] = [
  {
    id: "titrate",
    name: "Titrate",
    isOfWorkbook: false,
    Component: lazy(async () => {
      const { TitrateTask } = await import(
        /* webpackChunkName: "titrate" */ "./titrate/titrate-task"
      );
      return { default: TitrateTask };
    }),
  },
  {
    id: "batch",
    name: "Batch",
    isOfWorkbook: false,
    Component: lazy(async () => {
      const { BatchTask } = await import(/* webpackChunkName: "batch" */ "./batch/batch-task");
      return { default: BatchTask };
    }),
  },
  {
    id: "card",
    name: "Card",
    isOfWorkbook: false,
    Component: lazy(async () => {
      const { CardTask } = await import(/* webpackChunkName: "card" */ "./card/card-task");
      return { default: CardTask };
    }),
  },
  {
    id: "fuel",
    name: "Fuel",
    isOfWorkbook: false,
    Component: lazy(async () => {
      const { FuelTask } = await import(/* webpackChunkName: "fuel" */ "./fuel/fuel-task");
      return { default: FuelTask };
    }),
  },
  {
    id: "what-if",
    name: "What if",
    isOfWorkbook: false,
    Component: lazy(async () => {
      const { WhatIfTask } = await import(
        /* webpackChunkName: "what-if" */ "./what-if/what-if-task"
      );
      return { default: WhatIfTask };
    }),
  },
  {
    id: "logbook",
    name: "Logbook",
    isOfWorkbook: true,
    Component: lazy(async () => {
      const { LogbookTask } = await import(
        /* webpackChunkName: "logbook" */ "./logbook/logbook-task"
      );
      return { default: LogbookTask };
    }),
  },
  {
    id: "over-time",
    name: "Over time",
    isOfWorkbook: true,
    Component: lazy(async () => {
      const { OverTimeTask } = await import(
        /* webpackChunkName: "over-time" */ "./over-time/over-time-task"
      );
      return { default: OverTimeTask };
    }),
  },
  {
    id: "share",
    name: "Share",
    isOfWorkbook: true,
    Component: lazy(async () => {
      const { ShareTask } = await import(/* webpackChunkName: "share" */ "./share/share-task");
      return { default: ShareTask };
    }),
  },
  {
    id: "bench",
    name: "My bench",
    isOfWorkbook: false,
    Component: lazy(async () => {
      const { BenchTask } = await import(/* webpackChunkName: "bench" */ "./bench/bench-task");
      return { default: BenchTask };
    }),
  },
];
