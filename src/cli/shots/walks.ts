/** What is walked through for each task of the pane: a way to open it, and its screens. */
import type { Page } from "playwright-core";
import { batchScenes } from "../../../tests/taskpane/page/batch-scenes";
import { logbookScenes } from "../../../tests/taskpane/page/logbook-scenes";
import { type Look, scenes } from "../../../tests/taskpane/page/scenes";
import { whatIfLotScenes, whatIfScenes } from "../../../tests/taskpane/page/what-if-scenes";

export interface Walk {
  /** Of the test page: "task=what-if". */
  readonly query: string;
  readonly through: (page: Page, look: Look) => Promise<void>;
}

export const walks: Readonly<Record<string, readonly Walk[]>> = {
  titrate: [{ query: "", through: scenes }],
  batch: [{ query: "task=batch&book=sample", through: batchScenes }],
  "what-if": [
    { query: "task=what-if", through: whatIfScenes },
    { query: "task=what-if&book=sample", through: whatIfLotScenes },
  ],
  logbook: [{ query: "task=logbook&book=old", through: logbookScenes }],
};
