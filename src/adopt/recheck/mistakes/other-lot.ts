import { mistake } from "./mistake";

export const otherLot = mistake({
  id: "other-lot",
  name: "Another lot's acid value",
  sentence: "The acid figure is that of another lot: this row's own lot was titrated to another.",
  ways: (role, { ofLot }) =>
    (role === "acidValue"
      ? (ofLot?.otherAcidValues ?? [])
      : role === "ffa"
        ? (ofLot?.otherFfas ?? [])
        : []
    ).map((value) => ({ result: () => value })),
  isCopy: true,
  isAlone: true,
});
