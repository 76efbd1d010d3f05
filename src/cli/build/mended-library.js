/**
 * A loader of the build: faults of the embedded spreadsheet that nothing but its text can be mended for. A
 * build stops when a text is not as it was.
 */
const mends = [
  {
    // A message channel is made for each pause of a calculation, and never closed once it was heard: a
    // browser keeps an open port, with all it leads to, as long as the page.
    file: /[\\/]core[\\/]lib[\\/]es[\\/]index\.js$/,
    was: "if (!cancelled) callback();",
    is: "channel.port1.onmessage = null; channel.port1.close(); channel.port2.close(); if (!cancelled) callback();",
  },
  {
    // Where the browser let a page read the machine's fonts, it read every one of them, and measured text
    // by these files: cells are drawn by the browser, which knows its fonts.
    file: /[\\/]engine-render[\\/]lib[\\/]es[\\/]index\.js$/,
    was: "this._loadFontsToBook();",
    is: "",
  },
  {
    // It draws sixty times a second whether there is anything to draw or not: see workbench/resting.ts.
    file: /[\\/]engine-render[\\/]lib[\\/]es[\\/]index\.js$/,
    was: "if (this._renderFrameTasks.length > 0) this._requestNewFrameHandler = requestNewFrame(this._renderFunction);",
    is: "if (this._renderFrameTasks.length > 0) this._requestNewFrameHandler = (globalThis.titrebookNextFrame ?? requestNewFrame)(this._renderFunction);",
  },
  {
    // Half a second after a double click the name of a sheet was taken for held down, and torn out of its
    // place: with the next file the whole grid went.
    file: /[\\/]sheets-ui[\\/]lib[\\/]es[\\/]index\.js$/,
    was: "if (!activeSlideItemElement || (",
    is: "if (!activeSlideItemElement?.hasPointerCapture(downEvent.pointerId) || (",
  },
  {
    // Of a formula that reads two ranges of one sheet, one is left in its index when the formula is made
    // anew. Found there it leads nowhere, which is right, and was told as an error each time.
    file: /[\\/]engine-formula[\\/]lib[\\/]es[\\/]index\.js$/,
    was: 'console.error("Dependency tree not found for treeId:", parentTreeId);',
    is: "",
  },
  {
    // Enter after Tab goes below the cell where the run of Tabs began, wherever one went in between by the
    // mouse or by an address: readings meant for one row went over those of another. Where the run came to
    // is kept with it, and anywhere else it is forgotten.
    file: /[\\/]sheets-ui[\\/]lib[\\/]es[\\/]index\.js$/,
    was: "const shortcutExperienceParam = shortcutExperienceService.getCurrentBySearch({",
    is: "let shortcutExperienceParam = shortcutExperienceService.getCurrentBySearch({",
  },
  {
    file: /[\\/]sheets-ui[\\/]lib[\\/]es[\\/]index\.js$/,
    was: "const isLastCell = isReverse ? primary.startRow === startRow && primary.startColumn === startColumn : primary.endRow === endRow && primary.endColumn === endColumn;",
    is: "const isLastCell = isReverse ? primary.startRow === startRow && primary.startColumn === startColumn : primary.endRow === endRow && primary.endColumn === endColumn; if (shortcutExperienceParam && shortcutExperienceParam.cameTo !== `${primary.actualRow},${primary.actualColumn}`) { shortcutExperienceService.remove(shortcutExperienceParam); shortcutExperienceParam = undefined; }",
  },
  {
    file: /[\\/]sheets-ui[\\/]lib[\\/]es[\\/]index\.js$/,
    was: "const next = isLastRowCell || isLastColumnCell ? startRange : findNextRange(startRange, direction, worksheet);",
    is: "const next = isLastRowCell || isLastColumnCell ? startRange : findNextRange(startRange, direction, worksheet); const run = keycode === KeyCode.TAB && shortcutExperienceService.getCurrentBySearch({ unitId, sheetId, keycode }); if (run) run.cameTo = `${next.startRow},${next.startColumn}`;",
  },
];

/** @param {string} source */
export default function mendedLibrary(source) {
  return mends
    .filter(({ file }) => file.test(this.resourcePath))
    .reduce((text, { was, is }) => {
      if (text.split(was).length !== 2) {
        throw new Error(
          `The spreadsheet is not as it was: look again at what ${import.meta.url} mends.`,
        );
      }
      return text.replace(was, () => is);
    }, source);
}
