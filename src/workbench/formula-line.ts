/**
 * A press on the formula line leaves the keyboard there, however short it is. The embedded spreadsheet gives it
 * to the cell a few frames after the press as well: what was typed after a quick press went into neither.
 */
import {
  DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY as lineId,
  DOCS_NORMAL_EDITOR_UNIT_ID_KEY as cellId,
  FOCUSING_FX_BAR_EDITOR,
  IContextService,
  type Injector,
} from "@univerjs/core";
import { DocSelectionRenderService, IRenderManagerService } from "@univerjs/preset-sheets-core";

const formulaLine = '[data-u-comp="formula-bar"]';

export function keepKeysInFormulaLine(injector: Injector, isTyping: () => boolean): void {
  const drawn = injector.get(IRenderManagerService);
  const context = injector.get(IContextService);
  const inCell = drawn.getRenderById(cellId)?.with(DocSelectionRenderService);
  const inLine = drawn.getRenderById(lineId)?.with(DocSelectionRenderService);
  if (!inCell || !inLine) return;
  let isPressed = false;
  window.addEventListener(
    "pointerdown",
    ({ target }) => {
      isPressed = target instanceof Element && target.closest(formulaLine) !== null;
    },
    { capture: true },
  );
  const focusCell = inCell.focus.bind(inCell);
  inCell.focus = () => {
    const isIn = context.getContextValue(FOCUSING_FX_BAR_EDITOR) && inLine.isFocusing;
    if (isPressed && isIn && isTyping()) return;
    focusCell();
  };
}
