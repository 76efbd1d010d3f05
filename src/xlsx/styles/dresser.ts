/** The workbook's styles, read when first asked for, written when anything was added. */
import { addContentType } from "../package/content-types";
import { contentTypes, relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { addRelationship, targetOf } from "../package/relationships";
import type { Dress } from "../patch/edits";
import { plainStyles } from "./plain-styles";
import { StyleSheet } from "./style-sheet";

export class WorkbookStyles {
  private part: string | undefined;
  private text = "";
  private sheet: StyleSheet | undefined;

  constructor(
    private readonly file: Package,
    private readonly workbookPart: string,
  ) {}

  private get styles(): StyleSheet {
    if (this.sheet) return this.sheet;
    const there = targetOf(this.file, this.workbookPart, relationshipTypes.styles);
    this.part = there;
    this.text = there === undefined ? plainStyles : this.file.need(there);
    this.sheet = new StyleSheet(there ?? "xl/styles.xml", this.text);
    return this.sheet;
  }

  dressed(style: number, dress: Dress): number {
    const asIs = dress.format === undefined && dress.look === undefined;
    return asIs ? style : this.styles.dressed(style, dress);
  }

  formatOf(style: number): string {
    return this.styles.formatOf(style);
  }

  save(): void {
    const text = this.sheet?.toText();
    if (text === undefined || text === this.text) return;
    if (this.part === undefined) {
      this.part = this.file.free((number) => `xl/styles${number === 1 ? "" : String(number)}.xml`);
      addContentType(this.file, this.part, contentTypes.styles);
      addRelationship(this.file, this.workbookPart, relationshipTypes.styles, this.part);
    }
    this.file.set(this.part, text);
  }
}
