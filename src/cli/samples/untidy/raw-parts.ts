/** What our writer does not write, put into the file's parts by hand: a picture, colours by value, merges. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { ferryPicture } from "./picture";

const sheetPart = "xl/worksheets/sheet1.xml";
const drawingPart = "xl/drawings/drawing1.xml";
const drawingRelations = "xl/drawings/_rels/drawing1.xml.rels";
const picturePart = "xl/media/image1.png";
const typesPart = "[Content_Types].xml";

const merges = '<mergeCells count="1"><mergeCell ref="A1:S1"/></mergeCells>';

const colours =
  '<conditionalFormatting sqref="L8:L209"><cfRule type="colorScale" priority="1"><colorScale><cfvo type="min"/><cfvo type="max"/><color rgb="FFFFFFFF"/><color rgb="FFF4B183"/></colorScale></cfRule></conditionalFormatting>' +
  '<conditionalFormatting sqref="Q8:Q209"><cfRule type="dataBar" priority="2"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF9DC3E6"/></dataBar></cfRule></conditionalFormatting>';

const picture =
  '<xdr:oneCellAnchor><xdr:from><xdr:col>30</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>1</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx="1143000" cy="571500"/><xdr:pic><xdr:nvPicPr><xdr:cNvPr id="90" name="Ferry" descr="A ferry on the water."/><xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr><xdr:blipFill><a:blip xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:embed="rId90"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext cx="1143000" cy="571500"/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:oneCellAnchor>';

const pictureRelation =
  '<Relationship Id="rId90" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/image" Target="/xl/media/image1.png"/>';

/** Text put in before a mark that must be there. */
function before(text: string, mark: string, added: string): string {
  const at = text.indexOf(mark);
  if (at < 0) throw new RangeError(`the file holds no ${mark}`);
  return text.slice(0, at) + added + text.slice(at);
}

/** The column of methanol was hidden by somebody. */
const hideMethanol = (sheet: string): string => {
  const mark = '<col min="18" max="18"';
  if (!sheet.includes(mark)) throw new RangeError("the sheet has no column R");
  return sheet.replace(mark, `${mark} hidden="1"`);
};

export function untidied(file: Uint8Array): Uint8Array {
  const parts = unzipSync(file);
  const text = (name: string): string => strFromU8(parts[name] as Uint8Array);
  const sheet = before(hideMethanol(text(sheetPart)), "<dataValidations", merges + colours);
  const changed: Record<string, Uint8Array> = {
    ...parts,
    [sheetPart]: strToU8(sheet),
    [drawingPart]: strToU8(before(text(drawingPart), "</xdr:wsDr>", picture)),
    [drawingRelations]: strToU8(
      before(text(drawingRelations), "</Relationships>", pictureRelation),
    ),
    [typesPart]: strToU8(
      before(text(typesPart), "<Override", '<Default Extension="png" ContentType="image/png"/>'),
    ),
    [picturePart]: ferryPicture(),
  };
  // The same time in every file, or its bytes would differ from day to day.
  return zipSync(changed, { level: 9, mtime: "1980-01-01T00:00:00" });
}
