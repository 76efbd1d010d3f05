/** Harvey, Modern Analytical Chemistry, Table 9.5, as it comes out of a sheet: sixteen points, the first at 0 mL. */
export const harveyPasted =
  `0 2.89;2 4.52;4 5.06;10 5.89;12 6.15;14 6.63;15 7.08;15.5 7.75;15.6 8.40;15.7 9.29;15.8 10.07;16 10.65;17 11.34;18 11.63;20 12.00;24 12.41`
    .replaceAll(" ", "\t")
    .replaceAll(";", "\n");
