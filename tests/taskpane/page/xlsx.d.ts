/** A workbook file as its bytes: the page's bundler puts them in. */
declare module "*.xlsx" {
  const bytes: Uint8Array;
  export default bytes;
}
