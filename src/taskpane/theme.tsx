/** The look of the pane, given to the components we did not draw ourselves. Colours: theme.css. */
import "./theme.css";
import {
  type BrandVariants,
  createDarkTheme,
  createLightTheme,
  FluentProvider,
  type Theme,
} from "@fluentui/react-components";
import { type ReactNode, useEffect, useState } from "react";

const sea: BrandVariants = {
  10: "#02080a",
  20: "#051a1f",
  30: "#062931",
  40: "#073640",
  50: "#084350",
  60: "#09505e",
  70: "#0b5563",
  80: "#0f6a7b",
  90: "#217c8d",
  100: "#3a8e9e",
  110: "#53a0af",
  120: "#6db2bf",
  130: "#86d3de",
  140: "#a3dde5",
  150: "#c0e7ec",
  160: "#def2f4",
};

/** The same names in light and dark: theme.css says which colour each is. */
const ours: Partial<Theme> = {
  fontFamilyBase: 'system-ui, "Segoe UI", Roboto, "Helvetica Neue", sans-serif',
  fontSizeBase200: "14px",
  fontSizeBase300: "16px",
  lineHeightBase300: "22px",
  borderRadiusMedium: "6px",
  colorNeutralBackground1: "var(--pane-card)",
  colorNeutralForeground1: "var(--pane-ink)",
  colorNeutralForeground2: "var(--pane-ink)",
  colorNeutralForeground3: "var(--pane-soft)",
  colorNeutralForeground4: "var(--pane-soft)",
  colorNeutralStroke1: "var(--pane-edge)",
  colorNeutralStrokeAccessible: "var(--pane-edge)",
  colorNeutralStrokeAccessibleHover: "var(--pane-ink)",
  colorNeutralStrokeAccessiblePressed: "var(--pane-ink)",
  colorBrandBackground: "var(--pane-accent)",
  colorNeutralForegroundOnBrand: "var(--pane-on-accent)",
  colorCompoundBrandStroke: "var(--pane-accent)",
  colorCompoundBrandForeground1: "var(--pane-accent)",
  colorPaletteRedForeground1: "var(--pane-wrong)",
  colorPaletteRedForeground3: "var(--pane-wrong)",
  colorPaletteRedBorder2: "var(--pane-wrong)",
  colorStatusDangerForeground1: "var(--pane-wrong)",
};

const light: Theme = { ...createLightTheme(sea), ...ours };
const dark: Theme = { ...createDarkTheme(sea), ...ours };

const prefersDark = "(prefers-color-scheme: dark)";

function useDark(): boolean {
  const [isDark, setDark] = useState(() => window.matchMedia(prefersDark).matches);
  useEffect(() => {
    const query = window.matchMedia(prefersDark);
    const changed = (): void => {
      setDark(query.matches);
    };
    query.addEventListener("change", changed);
    return () => {
      query.removeEventListener("change", changed);
    };
  }, []);
  return isDark;
}

export function PaneTheme({ children }: { children: ReactNode }) {
  return (
    <FluentProvider className="pane-theme" theme={useDark() ? dark : light}>
      {children}
    </FluentProvider>
  );
}
