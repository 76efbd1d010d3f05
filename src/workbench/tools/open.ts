/** What is fetched when a tool is first asked for; one of each for the page. */
import "./tools.css";
export { chooseFrom } from "../choosing/choice-list";
import type { Bench } from "./bench";
import { find } from "./find";
import { Menu } from "./menu";

interface Tools {
  readonly menu: Menu;
  readonly find: typeof find;
}

let made: Tools | undefined;

export function toolsOf(bench: Bench): Tools {
  return (made ??= { menu: new Menu(bench), find });
}
