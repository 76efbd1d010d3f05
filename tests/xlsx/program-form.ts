/**
 * Files of ours in the forms in which other hands leave them: as the spreadsheet program saves a file (a
 * Mac's, 16.107, unpacked: every call an array formula with a cell mark, column formulas with array="1",
 * the functions listed with the web extension), and as another add-in damages one.
 */
import { office, type Parts, partsOf, zipped } from "./files";

const formulaCell = /<c r="([A-Z]+\d+)"([^>]*)><f>([^<]*TITRE[^<]*)<\/f>/gi;
const arrayCell = /<c r="([A-Z]+\d+)"(?![^>]* cm=)([^>]*)><f t="array"/gi;
const columnFormula = /<calculatedColumnFormula>([^<]*TITRE)/gi;

export const extensionPart = "xl/webextensions/webextension1.xml";
export const functionList =
  '<we:property name="customFunctionIdList" value="[&quot;TITRE.ACIDVALUE&quot;,&quot;TITRE.DOSE&quot;]"/>';

/** Web extensions with the list of functions, which the program writes beside the pane. */
function withExtension(parts: Parts): Parts {
  const types = "application/vnd.ms-office.webextension";
  const override = (part: string, type: string) =>
    `<Override PartName="/${part}" ContentType="${type}+xml"/>`;
  return {
    ...parts,
    "[Content_Types].xml": (parts["[Content_Types].xml"] ?? "").replace(
      "</Types>",
      `${override("xl/webextensions/taskpanes.xml", `${types}taskpanes`)}${override(extensionPart, types)}</Types>`,
    ),
    "_rels/.rels": (parts["_rels/.rels"] ?? "").replace(
      "</Relationships>",
      '<Relationship Id="rIdPane" Type="http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes" Target="xl/webextensions/taskpanes.xml"/></Relationships>',
    ),
    "xl/webextensions/taskpanes.xml": `<wetp:taskpanes xmlns:wetp="http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11"><wetp:taskpane dockstate="right" visibility="0" width="350" row="4"><wetp:webextensionref xmlns:r="${office}" r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`,
    "xl/webextensions/_rels/taskpanes.xml.rels": `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.microsoft.com/office/2011/relationships/webextension" Target="webextension1.xml"/></Relationships>`,
    [extensionPart]: `<we:webextension xmlns:we="http://schemas.microsoft.com/office/webextensions/webextension/2010/11" id="{00000000-0000-0000-0000-000000000001}"><we:reference id="x" version="1.0.0.0" store="developer" storeType="Registry"/><we:properties>${functionList}</we:properties><we:bindings/></we:webextension>`,
  };
}

const isSheet = (name: string): boolean => /^xl\/worksheets\/[^/]+\.xml$/.test(name);

/** Each part of a kind changed. */
const each = (bytes: Uint8Array, change: (name: string, text: string) => string): Parts =>
  Object.fromEntries(
    Object.entries(partsOf(bytes)).map(([name, text]) => [name, change(name, text)]),
  );

/** What the program makes of a file of ours that it saves after all of its cells were written anew. */
export const asProgramSaves = (bytes: Uint8Array): Uint8Array =>
  zipped(
    withExtension(
      each(bytes, (name, text) => {
        if (/^xl\/tables\//.test(name)) {
          return text.replace(columnFormula, '<calculatedColumnFormula array="1">$1');
        }
        if (!isSheet(name)) return text;
        return text
          .replace(formulaCell, '<c r="$1"$2 cm="1"><f t="array" ref="$1">$3</f>')
          .replace(arrayCell, '<c r="$1"$2 cm="1"><f t="array"');
      }),
    ),
  );

/** Calls of ours as another add-in leaves them: behind a link. */
export const asDamaged = (bytes: Uint8Array, link: string): Uint8Array =>
  zipped(
    each(bytes, (name, text) =>
      isSheet(name) ? text.replaceAll("_xldudf_TITRE_", `${link}_xldudf_TITRE_`) : text,
    ),
  );
