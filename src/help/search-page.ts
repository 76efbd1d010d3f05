/** The search: a list of everything, which a small script narrows to what is typed. Works offline. */
import { type Entry, searchable } from "./contents";
import { page, text } from "./page";

const entry = (each: Entry): string => {
  const place = each.title === each.page ? "" : ` <span class="on">${text(each.page)}</span>`;
  const says = searchable({ ...each, page: each.title }).says.trim();
  return `<li><a href="${each.address}">${text(each.title)}</a>${place}<p>${text(says)}</p></li>`;
};

export const searchPage = (entries: readonly Entry[]): string =>
  page(
    "Search",
    `<h1>Search</h1>
<p><label for="wanted">Words to look for</label><br><input id="wanted" type="search" autocomplete="off"></p>
<p id="count" role="status">${entries.length} entries.</p>
<ol id="entries">${entries.map(entry).join("\n")}</ol>
<script src="search.js" defer></script>`,
  );
