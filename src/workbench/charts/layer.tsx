/** The charts of the sheet that is shown, over its cells. What lies in frozen rows or columns stays there. */
import type { ChartPicture, FileChart } from "../../xlsx/file-chart";
import { ChartView } from "./chart-view";
import { type Geometry, meets, type Pane, panesOf, type Rect } from "./places";
import { chartWords, notDrawnWords } from "./words";

export interface ShownChart {
  readonly chart: FileChart;
  readonly rect: Rect;
  /** With what its cells hold now; undefined where it is not drawn. */
  readonly picture: ChartPicture | undefined;
}

export interface LayerProps {
  readonly charts: readonly ShownChart[];
  readonly geometry: Geometry;
  /** Brings a chart into view that the keyboard came to. */
  readonly reveal: (chart: FileChart) => void;
}

interface FrameProps extends ShownChart {
  readonly isSeen: boolean;
  /** The same chart in another part of the screen is the one that is read out. */
  readonly isRepeated: boolean;
  readonly reveal: () => void;
}

function Frame({ chart, rect, picture, isSeen, isRepeated, reveal }: FrameProps) {
  const words = picture ? chartWords(chart, picture) : notDrawnWords(chart);
  return (
    <div
      className={picture ? "chart-frame" : "chart-frame chart-missing"}
      style={{ left: rect.left, top: rect.top, width: rect.width, height: rect.height }}
      {...(isRepeated
        ? { "aria-hidden": true }
        : { role: "img", "aria-label": words, tabIndex: 0, onFocus: reveal })}
    >
      {isSeen && picture && <ChartView picture={picture} width={rect.width} height={rect.height} />}
      {isSeen && !picture && <p aria-hidden="true">{words}</p>}
    </div>
  );
}

const movesIn = (
  pane: Pane,
  rect: Rect,
  { frozenLeft, frozenWidth, frozenTop, frozenHeight }: Geometry,
) => {
  const [down, across] = pane.name.split("-");
  const right = frozenLeft + frozenWidth;
  const bottom = frozenTop + frozenHeight;
  const fitsDown = down === "frozen" ? rect.top < bottom : rect.top + rect.height > bottom;
  const fitsAcross = across === "frozen" ? rect.left < right : rect.left + rect.width > right;
  return (fitsDown || frozenHeight === 0) && (fitsAcross || frozenWidth === 0);
};

export function Layer({ charts, geometry, reveal }: LayerProps) {
  const panes = panesOf(geometry);
  const placed = charts.map((shown) => ({
    shown,
    panes: panes.filter((pane) => movesIn(pane, shown.rect, geometry)),
  }));
  return panes.map((pane) => (
    <div key={pane.name} className="chart-pane" style={{ ...pane.clip }}>
      <div
        className="chart-sheet"
        style={{
          transform: `translate(${String(pane.x)}px, ${String(pane.y)}px) scale(${String(geometry.zoom)})`,
        }}
      >
        {placed.map(({ shown, panes: own }, index) =>
          own.includes(pane) ? (
            <Frame
              key={index}
              {...shown}
              isSeen={meets(shown.rect, pane.seen)}
              isRepeated={own.at(-1) !== pane}
              reveal={() => reveal(shown.chart)}
            />
          ) : null,
        )}
      </div>
    </div>
  ));
}
