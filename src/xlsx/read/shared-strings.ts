/** The texts that cells share: plain text, and which of them were rich. */
import { decodeString } from "../xml/escape";
import { type Listener, type OpenTag, scanXml } from "../xml/scan";

export interface SharedStrings {
  readonly texts: readonly string[];
  readonly rich: ReadonlySet<number>;
}

class Reader implements Listener {
  readonly texts: string[] = [];
  readonly rich = new Set<number>();
  private growing = "";
  private isInText = false;
  private phonetic = 0;

  open({ local }: OpenTag, depth: number): void {
    if (depth === 2 && local === "si") this.growing = "";
    else if (local === "rPh") this.phonetic += 1;
    else if (local === "r" && depth === 3) this.rich.add(this.texts.length);
    else if (local === "t") this.isInText = this.phonetic === 0;
  }

  close({ local }: OpenTag, depth: number): void {
    if (local === "t") this.isInText = false;
    else if (local === "rPh") this.phonetic -= 1;
    else if (depth === 2 && local === "si") this.texts.push(decodeString(this.growing));
  }

  text(found: string): void {
    if (this.isInText) this.growing += found;
  }
}

export function readSharedStrings(part: string, text: string | undefined): SharedStrings {
  const reader = new Reader();
  if (text !== undefined) scanXml(part, text, reader);
  return reader;
}
