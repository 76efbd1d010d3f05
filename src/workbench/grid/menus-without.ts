/** What is taken out of the grid's menus: all that would be refused, and what has a name of its own there. */
import { refusedCommands } from "./refused-commands";

/** Cutting moves cells; protection would be refused item by item. */
const more = [
  "sheet.command.cut",
  "sheet.contextMenu.permission",
  "sheet.command.view-sheet-permission-from-sheet-bar",
  "sheet.command.change-sheet-protection-from-sheet-bar",
];

export const menusWithout = Object.fromEntries(
  [...refusedCommands.keys(), ...more].map((id) => [id, { hidden: true }] as const),
);
