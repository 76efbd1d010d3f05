/** The columns of the table: what is compared, each with all that its doses rest on. */
import { type Exact, exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { as, type Percent } from "../../core/quantity/quantity";
import { baseNamed } from "../../core/reference/bases";
import { acidValueFromFfa } from "../../core/titration/free-fatty-acid";
import type { AcidSource, DoseColumn } from "../../workbook/what-if/question";
import { notYetOf } from "../lots/not-yet";
import type { NumberFieldId } from "./fields";
import { type Bench, needed, neededList, type Wanting } from "./wanting";

/** The acid value of a recorded lot, by reference. */
function lotSource({ lots, draft }: Bench, mark: string, want: Wanting): AcidSource | undefined {
  if (lots === undefined) return want("compare", "The recorded lots are still being read.");
  const found = lots.find(({ lot }) => String(lot) === mark);
  if (!found) return want("compare", `Lot ${mark} is not in Titrations any more.`);
  if (found.acidValue === undefined || found.acidValue <= 0) {
    return want("compare", `Lot ${mark} shows no acid value: ${found.trouble}.`);
  }
  const why = notYetOf(found);
  if (why !== "" && !draft.usedAllTheSame.includes(why)) {
    return want("compare", `No dose yet of ${why} Or use it all the same.`);
  }
  const source = { value: as("mg KOH/g", exact(found.acidValue)), lot: found.lot };
  return why === "" ? source : { ...source, usedAllTheSame: why };
}

/** Of what was typed: an acid value, or % FFA, which stands for one. */
function typedAcid({ draft, mix }: Bench, value: Exact, want: Wanting): AcidSource | undefined {
  if (draft.picked.acidIn === "value") {
    const source = { value: as("mg KOH/g", value) };
    return mix?.acid.eq(value) === true ? { ...source, usedAllTheSame: mix.why } : source;
  }
  const ffa = as("%", value);
  const found = acidValueFromFfa(ffa);
  return isProblem(found) ? want("compare", say(found)) : { value: found, ffa };
}

const acidField = ({ draft }: Bench): "acid" | "ffa" =>
  draft.picked.acidIn === "value" ? "acid" : "ffa";

function acidColumns(bench: Bench, want: Wanting): AcidSource[] {
  const { draft, figures } = bench;
  const list = acidField(bench);
  const fromLots = draft.lots.flatMap((mark) => lotSource(bench, mark, want) ?? []);
  const isListEmpty = figures.list(list).kind === "empty";
  if (draft.lots.length > 0 && isListEmpty) return fromLots;
  const typed = neededList(bench, list, want).flatMap((each) => typedAcid(bench, each, want) ?? []);
  return [...fromLots, ...typed];
}

function oneAcid(bench: Bench, want: Wanting): AcidSource | undefined {
  const { picked, lot } = bench.draft;
  if (picked.acidFrom === "lot") {
    return lot === "" ? want("compare", "Choose a lot.") : lotSource(bench, lot, want);
  }
  const value = needed(bench, "compare", acidField(bench), want);
  return value && typedAcid(bench, value, want);
}

interface Fixed {
  readonly acid: AcidSource | undefined;
  readonly assay: Exact | undefined;
  readonly charge: Exact | undefined;
}

const percent = (value: Exact): Percent => as("%", value);

export function columnsOf(bench: Bench, want: Wanting): DoseColumn[] {
  const { by, base: picked } = bench.draft.picked;
  const base = baseNamed(picked);
  if (!base) return [];
  const figure = (field: NumberFieldId) => needed(bench, "compare", field, want);
  const fixed: Fixed = {
    acid: by === "acid" ? undefined : oneAcid(bench, want),
    assay: by === "assay" || by === "base" ? undefined : figure("assay"),
    charge: by === "charge" || by === "base" ? undefined : figure("charge"),
  };
  const { acid, assay, charge } = fixed;
  switch (by) {
    case "acid": {
      const acids = acidColumns(bench, want);
      return assay && charge
        ? acids.map((each) => ({
            acid: each,
            base,
            assay: percent(assay),
            charge: percent(charge),
          }))
        : [];
    }
    case "assay": {
      const assays = neededList(bench, "assay", want);
      return acid && charge
        ? assays.map((each) => ({ acid, base, assay: percent(each), charge: percent(charge) }))
        : [];
    }
    case "charge": {
      const charges = neededList(bench, "charge", want);
      return acid && assay
        ? charges.map((each) => ({ acid, base, assay: percent(assay), charge: percent(each) }))
        : [];
    }
    case "base": {
      if (bench.draft.bases.length === 0) want("compare", "Choose a base.");
      return bench.draft.bases.flatMap((name) => {
        const own = baseNamed(name);
        const [ownAssay, ownCharge] = [figure(`assay${name}`), figure(`charge${name}`)];
        return own && acid && ownAssay && ownCharge
          ? [{ acid, base: own, assay: percent(ownAssay), charge: percent(ownCharge) }]
          : [];
      });
    }
  }
}
