/** News of an act holds as long as the act is the last thing done: taken back, that is said; done over, it goes. */

/** How many steps can be taken back, and done again. */
export interface Steps {
  readonly undos: number;
  readonly redos: number;
}

export interface Teller {
  say(sentence: string): void;
  clear(): void;
  /** What is said now: another each time. */
  readonly turn: number;
}

export class ToldOfAct {
  private told:
    | { readonly turn: number; readonly steps: Steps; readonly undone: string | undefined }
    | undefined;
  private now: Steps = { undos: 0, redos: 0 };

  constructor(private readonly news: Teller) {}

  /** Right after the act. @param undone said when it is taken back */
  say(sentence: string, undone: string): void {
    this.tell(sentence, undone);
  }

  /** Something was done, taken back or done again. */
  steps(now: Steps): void {
    this.now = now;
    const { told, news } = this;
    if (!told) return;
    const isSame = now.undos === told.steps.undos && now.redos === told.steps.redos;
    if (isSame && news.turn === told.turn) return;
    this.told = undefined;
    if (news.turn !== told.turn) return;
    const isTakenBack = now.undos < told.steps.undos && now.redos > told.steps.redos;
    if (isTakenBack && told.undone !== undefined) this.tell(told.undone, undefined);
    else news.clear();
  }

  private tell(sentence: string, undone: string | undefined): void {
    this.news.say(sentence);
    this.told = { turn: this.news.turn, steps: this.now, undone };
  }
}
