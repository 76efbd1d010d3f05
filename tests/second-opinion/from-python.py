"""The second opinion of a plain program on the finished fuel: exact fractions, nothing of ours.

Run from the top folder: python3 tests/second-opinion/from-python.py
It writes tests/second-opinion/fixtures/fuel.json: rows of [function, arguments, answer]. Where the
answer is the beginning of a sentence or an error it is a text. Formulas were typed anew from the
methods named in src/core/reference/sources.ts; ENDPOINT goes another way than ours, by fitting the
second difference through two points with Cramer's rule.
"""

import json
import random
from fractions import Fraction as F

random.seed(23)
H, C, O = F("1.008"), F("12.011"), F("15.999")
METAL = {"KOH": F("39.0983"), "KOCH3": F("39.0983"), "NaOH": F("22.98976928"), "NaOCH3": F("22.98976928")}
REST = {"KOH": O + H, "NaOH": O + H, "KOCH3": O + C + 3 * H, "NaOCH3": O + C + 3 * H}
BASE = {name: METAL[name] + REST[name] for name in METAL}
OLEATE = 18 * C + 33 * H + 2 * O
WATER = 2 * H + O
GLYCEROL = 3 * C + 8 * H + 3 * O
OILS = {None: 57 * C + 104 * H + 6 * O, "soybean": F("876.56"), "coconut": F("656.14"), "tallow": F("858.67")}
rows = []


def between(low, high, places):
    return round(random.uniform(low, high), places)


def f(x):
    return F(repr(x))


def row(name, given, answer):
    rows.append([name, given, answer if isinstance(answer, (str, list)) else float(answer)])


def mean(xs):
    return sum(map(f, xs), F(0)) / len(xs)


for _ in range(60):
    base = random.choice(list(BASE))
    titres = [between(0.3, 20, 2) for _ in range(random.randint(1, 4))]
    blanks = [between(0.02, 0.2, 2) for _ in range(random.randint(0, 3))]
    c, m = between(0.005, 0.1, 4), between(2, 120, 2)
    net = mean(titres) - (mean(blanks) if blanks else 0)
    given = [[titres], [blanks] if blanks else "neutralised", c, m, base]
    soap = net * f(c) * (OLEATE + METAL[base]) * 1000 / f(m)
    row("FUELSOAP", given, soap)
    row("FUELCATALYST", given, net * f(c) * BASE[base] * 1000 / f(m))
    found, free = between(1, 9000, 2), between(0.1, 200, 2)
    metal = f(found) * METAL[base] / (OLEATE + METAL[base])
    row("FUELMETAL", [found, base], metal)
    row("FUELMETAL", [found, base, free], metal + f(free) * METAL[base] / BASE[base])

    blanks, taken = [between(24, 26, 2) for _ in range(2)], [between(2, 23, 2) for _ in range(2)]
    portion = between(0.5, 4, 3)
    row("GLYCEROL", [[taken], [blanks], c, portion], (mean(blanks) - mean(taken)) * f(c) * GLYCEROL / 40 / f(portion))
    total, oil = between(0.1, 3, 3), random.choice(list(OILS))
    free = round(total * random.uniform(0.02, 0.9), 4)
    row("CONVERSION", [total, free] + ([oil] if oil else []),
        100 * (1 - (f(total) - f(free)) * OILS[oil] / (100 * GLYCEROL)))

    dish, oil_in, lost = between(20, 60, 3), between(5, 40, 3), between(0.005, 0.5, 3)
    before = round(dish + oil_in, 3)
    after = round(before - lost, 3)
    row("LOSSONHEATING", [dish, before, after], 100 * (f(before) - f(after)) / (f(before) - f(dish)))
    kpa, space, t, m = between(1, 90, 2), between(0.1, 2, 3), between(-5, 45, 1) or 1.5, between(5, 60, 2)
    moles = f(kpa) * f(space) / (F("8.314462618") * (f(t) + F("273.15")))
    row("WATERFROMGAS", [kpa, space, t, m], 100 * moles * WATER / f(m))

    kg, wet, av = between(5, 900, 1), between(0.02, 0.9, 3), between(0.2, 9, 3)
    assay, charge = between(80, 99, 1), between(0.3, 1.4, 3)
    is_methoxide = base.endswith("CH3")
    parts = [f(kg) * f(wet) / 100]
    acid = f(kg) * f(av) / F("56.1")
    pure = f(kg) * 10 * f(charge)
    weighed = (acid * BASE[base] + pure) * 100 / f(assay)
    parts += [F(0)] * 3 if is_methoxide else [
        acid * WATER / 1000, pure / BASE[base] * WATER / 1000, weighed * (100 - f(assay)) / 100000]
    meoh, wet_meoh = between(1, 200, 1), between(0.05, 4, 2)
    for extra, methanol in (([], F(0)), ([meoh, wet_meoh], f(meoh) * f(wet_meoh) / 100)):
        every = parts + [methanol]
        figures = every + [sum(every), 100 * sum(every) / f(kg)]
        row("WATERBALANCE", [kg, wet, av, base, assay, charge] + extra, [float(x) for x in figures])

    lye, litres, tlye, tl, rise = (between(100, 3000, 0), between(5, 90, 1), between(5, 40, 1),
                                   between(0.1, 1, 2), between(3, 40, 1))
    row("TEMPERATURERISE", [lye, litres, tlye, tl, rise], f(rise) * f(lye) * f(tl) / (f(litres) * f(tlye)))

    limit = random.choice([0.5, 5, 0.06, 0.25])
    value, doubt = round(limit * random.uniform(0.5, 1.5), 4), round(limit * random.uniform(0.02, 0.5), 4)
    guard = F("1.645") * f(doubt) / F("1.96")
    said = "below:" if f(value) <= f(limit) - guard else "above:" if f(value) > f(limit) + guard else "cannot tell:"
    row("AGAINSTLIMIT", [value, doubt, limit], said)


def end_point(points):
    """None where it cannot be told."""
    (x, y) = zip(*points)
    if len(x) < 6 or any(b <= a for a, b in zip(x, x[1:])):
        return None
    slope = [(q - p) / (b - a) for a, b, p, q in zip(x, x[1:], y, y[1:])]
    middle = [(a + b) / 2 for a, b in zip(x, x[1:])]
    top = max(map(abs, slope))
    at = [abs(s) for s in slope].index(top)
    if top == 0 or at < 2 or at > len(slope) - 3:
        return None
    u = [(middle[i] + middle[i + 1]) / 2 for i in (at - 1, at)]
    w = [(slope[i + 1] - slope[i]) / (middle[i + 1] - middle[i]) for i in (at - 1, at)]
    # w = a + b u through both, zero at -a/b
    det = u[1] - u[0]
    a, b = (w[0] * u[1] - w[1] * u[0]) / det, (w[1] - w[0]) / det
    return -a / b


for _ in range(150):
    n, end = random.randint(4, 18), between(2, 12, 2)
    rising = random.choice([1, -1])
    x, points, given = between(0.2, 1, 2), [], ([], [])
    for _ in range(n):
        shown = round(rising * 140 * ((x - end) / (0.3 + abs(x - end))) + random.gauss(0, 0.6), 1)
        gap = random.random() < 0.05
        given[0].append(None if gap else round(x, 2))
        given[1].append(shown)
        if not gap and shown != 0:
            points.append((f(round(x, 2)), f(shown)))
        x += random.choice([0.05, 0.1, 0.2, 0.5, 1.0])
    found = end_point(points) if points else None
    row("ENDPOINT", [[given[0]], [given[1]]], "#VALUE!" if found is None else found)
    if len(points) >= 2:
        row("STEEPNESS", [[given[0]], [given[1]]], [
            [float((a + b) / 2), float((q - p) / (b - a))]
            for (a, p), (b, q) in zip(points, points[1:])])

with open("tests/second-opinion/fixtures/fuel.json", "w") as out:
    out.write("[\n" + ",\n".join(map(json.dumps, rows)) + "\n]\n")
