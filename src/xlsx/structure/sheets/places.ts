/** Where parts of a file hold references to sheets: by local names, whatever their namespace. Data. */

const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/).filter(Boolean));

/** Elements whose text is a formula. */
export const formulaTexts = words(`
  f formula formula1 formula2 calculatedColumnFormula totalsRowFormula definedName
  nf sqref FmlaLink FmlaRange FmlaGroup FmlaTxbx FmlaPict
`);

/** Attributes that are a formula, on whatever element. */
export const formulaAttributes = words(`
  textlink linkedCell listFillRange fmlaLink fmlaRange fmlaTxbx fmlaGroup cellRange
`);

/** Attributes that are a formula on one element alone. */
export const formulaAttributesOf: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ["hyperlink", words("location")],
  ["cfvo", words("val")],
  ["parameter", words("cell")],
]);

/** Attributes that are the bare name of a sheet. */
export const sheetAttributesOf: ReadonlyMap<string, ReadonlySet<string>> = new Map([
  ["worksheetSource", words("sheet")],
  ["rangeSet", words("sheet")],
  ["dataRef", words("sheet")],
]);

/** What people wrote or read, and what formulas came to: a reference in it is a text. */
export const plainTexts = words(`
  t v author text title tag oddHeader oddFooter evenHeader evenFooter firstHeader firstFooter
  lpstr stringValue
`);
export const plainAttributes = words(`
  display tooltip prompt promptTitle error errorTitle name descr title alt altText comment
  description caption val
`);

/** Parts that hold no reference to a sheet of this workbook. */
export const isApart = (part: string): boolean =>
  /^docProps\/|\/externalLinks\/|\/sharedStrings|\/styles|\/theme\/|^customXml\/|\/persons\/|\/comments[^/]*\.xml$|\/threadedComments\/|^\[Content_Types\]|\/media\/|\/embeddings\//i.test(
    part,
  ) || !/\.(?:xml|vml|rels)$/i.test(part);
