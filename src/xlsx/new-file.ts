/** The smallest workbook: one empty sheet, plain styles, and the mark by which formulas spill. */
import { zipSync } from "fflate";
import { contentTypes, namespaces, relationshipTypes } from "./package/names";
import { emptySheet } from "./patch/new-sheet";
import { plainStyles } from "./styles/plain-styles";
import { escapeAttribute } from "./xml/escape";

const xml = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const workbookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

const relationships = (...items: readonly (readonly [string, string])[]): string =>
  `${xml}<Relationships xmlns="${namespaces.packageRelationships}">${items
    .map(
      ([type, target], index) =>
        `<Relationship Id="rId${String(index + 1)}" Type="${type}" Target="${target}"/>`,
    )
    .join("")}</Relationships>`;

/** The engine that wrote it, so that no program thinks its results old; see the notes on sharing. */
const calculation = '<calcPr calcId="191029"/>';

const workbook = (sheet: string): string =>
  `${xml}<workbook xmlns="${namespaces.main}" xmlns:r="${namespaces.relationships}"><sheets><sheet name="${escapeAttribute(sheet)}" sheetId="1" r:id="rId1"/></sheets>${calculation}</workbook>`;

/** MS-XLSX 2.2.4.1: cells marked 1 hold formulas that spill by themselves. */
const metadata = `${xml}<metadata xmlns="${namespaces.main}" xmlns:xda="${namespaces.dynamicArrays}"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

const types = `${xml}<Types xmlns="${namespaces.contentTypes}"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${workbookType}"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${contentTypes.worksheet}"/><Override PartName="/xl/styles.xml" ContentType="${contentTypes.styles}"/><Override PartName="/xl/metadata.xml" ContentType="${contentTypes.metadata}"/></Types>`;

/** Dates in the file: there is no clock here. */
const stamp = "1980-01-02T00:00:00";

export function emptyFile(sheet: string): Uint8Array {
  const bytes = new TextEncoder();
  const { worksheet, styles, metadata: marks, workbook: main } = relationshipTypes;
  const parts = {
    "[Content_Types].xml": types,
    "_rels/.rels": relationships([main, "xl/workbook.xml"]),
    "xl/workbook.xml": workbook(sheet),
    "xl/_rels/workbook.xml.rels": relationships(
      [worksheet, "worksheets/sheet1.xml"],
      [styles, "styles.xml"],
      [marks, "metadata.xml"],
    ),
    "xl/worksheets/sheet1.xml": emptySheet,
    "xl/styles.xml": plainStyles,
    "xl/metadata.xml": metadata,
  };
  return zipSync(
    Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, bytes.encode(text)])),
    { mtime: stamp },
  );
}
