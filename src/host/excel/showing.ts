/** Is the pane seen? Its page goes on when the pane is closed, since the functions run in it too. */
import type { Showing } from "../../sheet/port/resting";

export function paneShowing(page: Document): Showing {
  let isOpen = true;
  const told = new Set<() => void>();
  const isShown = (): boolean => isOpen && page.visibilityState === "visible";
  const tell = (): void => {
    if (isShown()) for (const each of told) each();
  };
  page.addEventListener("visibilitychange", tell);
  // not every program says when a pane is closed: then what the page itself says must do
  Promise.resolve()
    .then(() =>
      Office.addin.onVisibilityModeChanged(({ visibilityMode }) => {
        isOpen = visibilityMode !== Office.VisibilityMode.hidden;
        tell();
      }),
    )
    .catch(() => undefined);
  return {
    isShown,
    watch: (shown) => {
      told.add(shown);
      return () => told.delete(shown);
    },
  };
}
