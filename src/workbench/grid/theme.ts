/** The page's own colours for the grid's controls and for tables in it. */
import { BorderStyleTypes } from "@univerjs/core";
import { defaultTheme, type Theme } from "@univerjs/themes";
import { tableThemeName } from "../look";

export const theme: Theme = {
  ...defaultTheme,
  primary: {
    50: "#eff6f6",
    100: "#dfeaea",
    200: "#bcd5d6",
    300: "#8fb8ba",
    400: "#4c8d92",
    500: "#1f6f77",
    600: "#0b5b65",
    700: "#0a4a52",
    800: "#093d44",
    900: "#12343b",
  },
};

const line = { s: BorderStyleTypes.THIN, cl: { rgb: "#b9c9c9" } };

/** Lines only: what a cell is for is said by its own background. */
export const tableTheme = {
  name: tableThemeName,
  style: {
    wholeStyle: { bd: { t: line, r: line, b: line, l: line } },
    headerRowStyle: { bd: { t: line, b: { ...line, cl: { rgb: "#0b5b65" } } } },
  },
};
