/** The script of the search page: shows the entries that fit, best first. */
import { fit } from "./find";

const wanted = document.getElementById("wanted") as HTMLInputElement | null;
const entries = document.getElementById("entries");
const count = document.getElementById("count");

if (wanted && entries && count) {
  const all = [...entries.children].map((item) => ({
    item: item as HTMLElement,
    title: item.querySelector("a")?.textContent ?? "",
    says: `${item.querySelector(".on")?.textContent ?? ""} ${item.querySelector("p")?.textContent ?? ""}`,
  }));

  const show = (): void => {
    const asked = wanted.value.trim();
    const found = all
      .map((entry) => ({ ...entry, fit: asked === "" ? 1 : fit(entry, asked) }))
      .filter((entry) => entry.fit > 0)
      .sort((a, b) => b.fit - a.fit);
    entries.replaceChildren(...found.map(({ item }) => item));
    count.textContent =
      found.length === 0 ? `No help found for “${asked}”.` : `${found.length} entries.`;
  };

  wanted.value = new URLSearchParams(location.search).get("for") ?? "";
  wanted.addEventListener("input", show);
  show();
}
