/** The open file, in the worker: what is asked of it is answered here, one letter after another. */
import { isRefused, type Refusal, refused } from "../../sheet/refusal";
import {
  type Edit,
  isFileProblem,
  newXlsx,
  openXlsx,
  patchedXlsx,
  restructured,
  sayFile,
  type Workbook,
} from "../../xlsx";
import { lostIn, readByText } from "../acts/lost";
import { ActHistory, type Kept, type Step } from "../acts/act-history";
import { chartsIn } from "../../xlsx/charts";
import { ownLogbook } from "../../workbook/own/own-logbook";
import type { Answer, Answers, Asked, Beyond, Typed } from "./asked";
import { arraysOf, type OpenedFile } from "./opened-file";
import { notAsAsked } from "./verify";

function withoutBytes(workbook: Workbook): OpenedFile {
  const { sheets, names, dates, looks, kept, isProtected, isUnsettled } = workbook;
  const charts = chartsIn(workbook);
  return { sheets, names, dates, looks, kept, isProtected, isUnsettled, charts };
}

function own(): Answer<"new"> {
  const bytes = newXlsx(ownLogbook());
  return isFileProblem(bytes) ? refused(sayFile(bytes)) : { is: bytes };
}

export class FileHolder {
  private open: Workbook | undefined;
  private saved: Workbook | undefined;
  /** The file as it was when it was shown: to it goes back who takes back what was typed since. */
  private shown: Uint8Array = new Uint8Array();
  private history = new ActHistory();
  /** What came of an act, until it is shown. */
  private coming: { readonly open: Workbook; readonly history: ActHistory } | undefined;

  answer(asked: Asked): Answer<keyof Answers> {
    switch (asked.ask) {
      case "open":
        return this.opened(asked.bytes);
      case "save":
      case "try":
        return this.made(asked);
      case "new":
        return own();
      case "act":
        return this.acted(asked);
      case "back":
      case "forth":
        return this.gone(asked);
      case "took":
        if (this.coming) ({ open: this.open, history: this.history } = this.coming);
        this.coming = this.saved = undefined;
        this.shows();
        return { is: undefined };
      case "keep":
        this.open = this.saved ?? this.open;
        return { is: undefined };
      case "forget":
        this.history = new ActHistory();
        this.shows();
        return { is: undefined };
    }
  }

  private shows(): void {
    this.shown = this.open?.file.bytes ?? this.shown;
  }

  private opened(bytes: Uint8Array): Answer<"open"> {
    const workbook = openXlsx(bytes);
    if (isFileProblem(workbook)) return refused(sayFile(workbook));
    this.open = workbook;
    this.shows();
    return { is: withoutBytes(workbook) };
  }

  /** The open file with edits made, read back. */
  private edited(edits: readonly Edit[]): Workbook | Refusal {
    if (!this.open) return refused("No file is open.");
    const again = patchedXlsx(this.open, edits);
    if (isFileProblem(again)) return refused(sayFile(again));
    const wrong = notAsAsked(edits, again, this.open);
    return wrong === undefined
      ? again
      : refused(`The new file was read back, and ${wrong} does not hold what it should.`);
  }

  private made({ ask, edits }: Extract<Asked, { ask: "save" | "try" }>): Answer<"save"> {
    const again = this.edited(edits);
    if (isRefused(again)) return again;
    if (ask === "save") this.saved = again;
    return { is: { bytes: again.file.bytes, arrays: arraysOf(again) } };
  }

  private comes(next: Workbook, after: ActHistory, step: Step, lost: number): Answer<"act"> {
    this.coming = { open: next, history: after };
    const { counts } = after;
    const byText = readByText(next);
    const size = next.file.bytes.length;
    return { is: { opened: withoutBytes(next), size, lost, byText, step, counts } };
  }

  /** The file as it was shown, with what its formulas came to there; undefined where that cannot be written. */
  private asShown(settled: readonly Edit[]): Uint8Array | undefined {
    if (settled.length === 0) return this.shown;
    const file = openXlsx(this.shown);
    const made = isFileProblem(file) ? file : patchedXlsx(file, settled);
    return isFileProblem(made) ? undefined : made.file.bytes;
  }

  /** What was typed since the file was shown is a step too. */
  private withTyped({ cells, settled }: Typed): ActHistory {
    const shown = cells === undefined ? undefined : this.asShown(settled);
    return cells === undefined || shown === undefined
      ? this.history
      : this.history.done(shown, { cells });
  }

  private acted(asked: Extract<Asked, { ask: "act" }>): Answer<"act"> {
    const { act, says } = asked;
    const before = this.edited(asked.edits);
    if (isRefused(before)) return before;
    const next = restructured(before, act);
    if (isFileProblem(next)) return refused(sayFile(next));
    const step = { act, says };
    const after = this.withTyped(asked).done(before.file.bytes, step);
    return this.comes(next, after, step, lostIn(act, before, next));
  }

  /** What cannot be written cannot be done again, but never stands in the way back. */
  private beyond({ edits, cells }: Beyond): Kept | undefined {
    const later = cells === undefined ? undefined : this.edited(edits);
    if (cells === undefined || !later || isRefused(later)) return undefined;
    return { file: later.file.bytes, step: { cells } };
  }

  private gone(asked: Extract<Asked, { ask: "back" | "forth" }>): Answer<"back"> {
    const { ask, beyond } = asked;
    const now = this.edited(asked.edits);
    if (isRefused(now)) return now;
    const typed = this.withTyped(asked);
    const history = beyond ? typed.next(this.beyond(beyond)) : typed;
    const to = history.to(ask);
    if (!to) return refused("There is nothing to go back to.");
    const next = openXlsx(to.file);
    if (isFileProblem(next)) return refused(sayFile(next));
    return this.comes(next, history[ask](now.file.bytes), to.step, 0);
  }
}
