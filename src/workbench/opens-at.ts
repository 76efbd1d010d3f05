/** Where the sample logbook opens: at a dose, so that the pane has something to explain at once. */
import type { CellPlace } from "./engine/place";

export const opensAt: CellPlace = { sheet: "Batches", row: 3, column: 11 };
