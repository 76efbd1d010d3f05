/** From the burette to the acid of the oil, as this maker works it out. */
import { average, minus, number, over, plus, product, times, type Worked } from "./expression";
import type { Habit } from "./habit";
import type { Planted } from "./mistakes";
import { type Day, molarMasses } from "./readings";
import type { Sheet } from "./sheet";

export interface Acid {
  readonly net: Worked;
  readonly acidValue: Worked | undefined;
  /** In percent. */
  readonly ffa: Worked | undefined;
  readonly heldAcid: number;
}

function strength(habit: Habit, sheet: Sheet, mistake: Planted | undefined): Worked {
  const { titrant } = habit;
  const given = sheet.given("strength", titrant.value);
  if (titrant.unit === "mol/L") return given;
  const gramsALitre = titrant.unit === "% w/v" ? times(given, number(10)) : given;
  if (mistake === "percent as molarity")
    return titrant.unit === "% w/v" ? given : over(given, number(10));
  const pure = titrant.isAsWeighed
    ? over(times(gramsALitre, sheet.given("assay", habit.assay)), number(100))
    : gramsALitre;
  return over(pure, number(molarMasses[titrant.base]));
}

function netPerGram(
  habit: Habit,
  day: Day,
  sheet: Sheet,
  mistake: Planted | undefined,
  other: Day,
): { net: Worked; perGram: Worked } {
  const { sample } = habit;
  const isRead = habit.reads === "titres";
  const titres = day.titres.map((value, at) =>
    isRead ? sheet.read(`titre ${at + 1}`, value) : number(value),
  );
  const blanks = day.blanks.map((value, at) =>
    habit.blank === "beside"
      ? sheet.given("blank", value)
      : sheet.read(at === 0 ? "blank" : "blank 2", value),
  );
  const blank = blanks.length === 0 ? undefined : average(blanks);
  const less = (titre: Worked): Worked => {
    if (!blank || mistake === "blank not subtracted") return titre;
    return mistake === "blank added" ? plus(titre, blank) : minus(titre, blank);
  };
  if (sample.isOwn) {
    const each = titres.map((titre, at) =>
      over(less(titre), sheet.read(`sample ${at + 1}`, day.samples[at] ?? sample.size)),
    );
    const shown =
      mistake === "mean of wrong titres"
        ? each.slice(0, -1).concat(number((other.titres[0] ?? 1) * 2))
        : each;
    return { net: average(titres.map(less)), perGram: average(shown) };
  }
  const wrongly = blank
    ? [...titres.slice(1), blank]
    : [...titres.slice(1), number((other.titres[0] ?? 1) * 1.5)];
  const mean =
    habit.reads === "net"
      ? (titres[0] as Worked)
      : sheet.put(
          "mean",
          average(
            mistake === "mean of wrong titres"
              ? wrongly
              : mistake === "one titre left out"
                ? titres.slice(1)
                : titres,
          ),
        );
  const net = habit.reads === "net" ? sheet.read("net", mean.value) : sheet.put("net", less(mean));
  const used = mistake === "blank twice" && blank ? minus(net, blank) : net;
  const portion = sheet.given("sample", day.samples[0] ?? sample.size);
  const density = sheet.given("density", habit.density.sample);
  const grams = sample.by === "g" || mistake === "1 mL as 1 g" ? portion : times(portion, density);
  return { net: used, perGram: over(used, grams) };
}

export function workTitration(
  habit: Habit,
  day: Day,
  sheet: Sheet,
  mistake: Planted | undefined,
  other: Day,
): Acid {
  const { net, perGram } = netPerGram(habit, day, sheet, mistake, other);
  const c = strength(habit, sheet, mistake);
  const acidValue = sheet.put("acidValue", product(number(habit.acidConstant), c, perGram));
  const mass =
    mistake === "slip by ten"
      ? habit.acidMass / 10
      : mistake === "acid value as percent"
        ? habit.acidConstant * 10
        : habit.acidMass;
  const percent = over(product(c, perGram, number(mass)), number(10));
  const ffa = sheet.putScaled("ffa", percent, habit.ffaIn === "%" ? 1 : 100);
  return { net, acidValue, ffa, heldAcid: habit.hasFfa ? ffa.value : acidValue.value };
}
