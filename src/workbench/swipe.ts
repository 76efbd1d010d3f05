/**
 * A finger that is drawn over the cells scrolls them, as on every page; the embedded spreadsheet would
 * take it for a mouse and select. A tap selects as before, and a finger that rests first may still draw a
 * selection. What begins on the headings or the scroll bars is left alone.
 */

/** Pixels a finger may stray and still tap. */
const stray = 8;
/** Milliseconds after which it rests. */
const rest = 350;
/** Pixels at the edges that are no cells: headings left and above, scroll bars right and below. */
const edges = { left: 46, top: 20, right: 18, bottom: 18 };

/** How the spreadsheet calls the canvas of its cells; its formula line has one too. */
const ofCells = "univer-sheet-main-canvas";

type Touch =
  | { readonly is: "none" }
  /** Down, and it is not known yet what it will be. */
  | {
      readonly is: "down";
      readonly event: PointerEvent;
      readonly timer: ReturnType<typeof setTimeout>;
    }
  | { readonly is: "swipe"; x: number; y: number };

const isCells = ({ clientX, clientY }: PointerEvent, canvas: HTMLElement): boolean => {
  const { left, top, right, bottom } = canvas.getBoundingClientRect();
  return (
    clientX > left + edges.left &&
    clientX < right - edges.right &&
    clientY > top + edges.top &&
    clientY < bottom - edges.bottom
  );
};

/** Events that are made here, and go on to the spreadsheet. */
const ours = new WeakSet<Event>();

function passOn(canvas: HTMLElement, event: PointerEvent): void {
  const again = new PointerEvent(event.type, event);
  ours.add(again);
  canvas.dispatchEvent(again);
}

export function letFingersScroll(grid: HTMLElement): void {
  let touch: Touch = { is: "none" };
  const on = (
    type: "pointerdown" | "pointermove" | "pointerup" | "pointercancel",
    does: (event: PointerEvent, canvas: HTMLElement) => boolean,
  ): void => {
    grid.addEventListener(
      type,
      (event) => {
        const canvas = event.target;
        if (event.pointerType !== "touch" || ours.has(event)) return;
        if (!(canvas instanceof HTMLCanvasElement) || !canvas.id.startsWith(ofCells)) return;
        if (does(event, canvas)) event.stopImmediatePropagation();
      },
      { capture: true },
    );
  };
  on("pointerdown", (event, canvas) => {
    if (!event.isPrimary || !isCells(event, canvas)) return false;
    const timer = setTimeout(() => {
      // it rests: from now on the spreadsheet has it
      touch = { is: "none" };
      passOn(canvas, event);
    }, rest);
    touch = { is: "down", event, timer };
    return true;
  });
  on("pointermove", (event, canvas) => {
    if (touch.is === "none") return false;
    const from = touch.is === "down" ? { x: touch.event.clientX, y: touch.event.clientY } : touch;
    const [across, down] = [from.x - event.clientX, from.y - event.clientY];
    if (touch.is === "down" && Math.hypot(across, down) < stray) return true;
    if (touch.is === "down") clearTimeout(touch.timer);
    touch = { is: "swipe", x: event.clientX, y: event.clientY };
    const place = { clientX: event.clientX, clientY: event.clientY };
    canvas.dispatchEvent(
      new WheelEvent("wheel", {
        ...place,
        deltaX: across,
        deltaY: down,
        bubbles: true,
        cancelable: true,
      }),
    );
    return true;
  });
  on("pointerup", (event, canvas) => {
    if (touch.is === "none") return false;
    const was = touch;
    touch = { is: "none" };
    if (was.is === "swipe") return true;
    clearTimeout(was.timer);
    passOn(canvas, was.event);
    passOn(canvas, event);
    return true;
  });
  on("pointercancel", () => {
    if (touch.is === "down") clearTimeout(touch.timer);
    const isOurs = touch.is !== "none";
    touch = { is: "none" };
    return isOurs;
  });
}
