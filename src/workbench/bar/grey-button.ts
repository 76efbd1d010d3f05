/** The button in the bar that says how many formulas are shown in grey, and lists why. */
import { counted } from "../../sheet/counted";
import type { Page } from "../page";
import { greyCount, greyList, type Holds } from "./held-list";
import type { News } from "./news";

/** @returns to be called whenever something was worked out */
export function greyButton({ grey }: Pick<Page, "grey">, grid: Holds, news: News): () => void {
  grey.addEventListener("click", () => {
    news.say(
      "You can go on working. Grey marks figures that this page leaves to another program:",
      ...greyList(grid),
    );
  });
  return () => {
    const count = greyCount(grid);
    grey.hidden = count === 0;
    grey.textContent = `${counted(count, "grey cell")}: why?`;
  };
}
