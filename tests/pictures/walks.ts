/** What is photographed: each task of the pane, the built workbench, the help, in the widths of each. */
import type { Page } from "playwright-core";
import { batchScenes, heldBackScenes } from "../taskpane/page/batch-scenes";
import { cardQuery, cardScenes } from "../taskpane/page/card-scenes";
import { fuelQuery, fuelScenes } from "../taskpane/page/fuel-scenes";
import { dropsScenes, logbookScenes } from "../taskpane/page/logbook-scenes";
import { type Look, scenes } from "../taskpane/page/scenes";
import { overTimeNothing, overTimeQuery, overTimeScenes } from "../taskpane/page/over-time-scenes";
import { recordQuery, recordScenes } from "../taskpane/page/record-scenes";
import { refusedShareScenes, shareScenes } from "../taskpane/page/share-scenes";
import { titrantQuery, titrantScenes } from "../taskpane/page/titrant-scenes";
import { whatIfLotScenes, whatIfScenes } from "../taskpane/page/what-if-scenes";
import { helpScenes } from "./help-scenes";
import { workbenchScenes } from "./workbench-scenes";

export interface Walk {
  /** Of the pane's own page a query, "task=what-if"; of the build a path, "help/index.html". */
  readonly at: string;
  readonly through: (page: Page, look: Look) => Promise<void>;
}

export interface Subject {
  /** The pane is put together for the occasion; the rest is what `npm run build` made. */
  readonly of: "pane" | "build";
  /** In pixels. */
  readonly widths: readonly number[];
  readonly walks: readonly Walk[];
}

const pane = (...walks: readonly Walk[]): Subject => ({ of: "pane", widths: [320, 340], walks });
const build = (...walks: readonly Walk[]): Subject => ({
  of: "build",
  widths: [320, 900, 1400],
  walks,
});

export const subjects: Readonly<Record<string, Subject>> = {
  titrate: pane(
    { at: "", through: scenes },
    { at: titrantQuery, through: titrantScenes },
    { at: recordQuery, through: recordScenes },
  ),
  batch: pane(
    { at: "task=batch&book=sample", through: batchScenes },
    { at: "task=batch&book=sample", through: heldBackScenes },
  ),
  card: pane({ at: cardQuery, through: cardScenes }),
  fuel: pane({ at: fuelQuery, through: fuelScenes }),
  "what-if": pane(
    { at: "task=what-if", through: whatIfScenes },
    { at: "task=what-if&book=sample", through: whatIfLotScenes },
  ),
  logbook: pane(
    { at: "task=logbook&book=old", through: logbookScenes },
    { at: "task=logbook&book=drops", through: dropsScenes },
  ),
  share: pane(
    { at: "task=share&file=logbook", through: shareScenes },
    { at: "task=share&file=edited", through: refusedShareScenes },
  ),
  "over-time": pane(
    { at: overTimeQuery, through: overTimeScenes },
    { at: "task=over-time", through: overTimeNothing },
  ),
  workbench: build({ at: "", through: workbenchScenes }),
  help: build({ at: "help/index.html", through: helpScenes }),
};
