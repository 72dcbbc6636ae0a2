#!/usr/bin/env python3
"""Writes resources/refrigerants/*.json and tests/reference/coolprop_values.json.

Run from anywhere, with the versions pinned beside this file:
    python3 -m venv .venv && .venv/bin/pip install -r tests/reference/requirements-coolprop.txt
    .venv/bin/python tests/reference/make_refrigerants.py
The program itself never calls CoolProp: it interpolates the tables written here. The test values are taken at
seeded points that are no nodes of the tables.
"""

import json
import pathlib
import random
import sys

import CoolProp
import CoolProp.CoolProp as cp

ROOT = pathlib.Path(__file__).resolve().parents[2]
SAT_FIRST_C, SAT_LAST_C, SAT_STEP_K = -40.0, 80.0, 1.0
VAP_STEP_K = 2.0  # between rows of equal saturation temperature
VAP_LAST_C = 140.0  # hottest vapour, past the discharge limit of every block
VAP_COLUMNS = 33  # superheat = (VAP_LAST_C - saturation) * (column / (VAP_COLUMNS - 1)) ** 2
SEED = 20240573

EU_2024 = "Regulation (EU) 2024/573, Annexes I, II and VI"
FLUIDS = {
    "R134a": dict(
        backend="R134a",
        equation="R. Tillner-Roth, H. D. Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657",
        gwp100=1430.0, gwp_source=EU_2024 + " (AR4)", safety_class="A1", lower_flammability_kg_m3=0.0,
        safety_source="ISO 817 class, from memory"),
    "R290": dict(
        backend="R290",
        equation="E. W. Lemmon, M. O. McLinden, W. Wagner, J. Chem. Eng. Data 54 (2009) 3141",
        gwp100=0.02, gwp_source=EU_2024 + " (AR6)", safety_class="A3", lower_flammability_kg_m3=0.038,
        safety_source="LFL: EN 378-1 and IEC 60335-2-40 annex GG; ISO 817 class, from memory"),
    "R1234yf": dict(
        backend="R1234yf",
        equation="E. W. Lemmon, R. Akasaka, Int. J. Thermophys. 43 (2022) 119",
        gwp100=0.501, gwp_source=EU_2024 + " (AR6)", safety_class="A2L", lower_flammability_kg_m3=0.289,
        safety_source="ISO 817 class and LFL, from memory"),
    "R513A": dict(
        backend="R1234yf&R134a", mass_fractions=[0.56, 0.44],
        equation="mixture of 56 % R1234yf and 44 % R134a by mass, multi-fluid mixture model of CoolProp. Glide is "
                 "below 0.1 K: pressure is that of the dew line, liquid is taken on the bubble line at the same "
                 "temperature",
        gwp100=round(0.56 * 0.501 + 0.44 * 1430.0, 1),
        gwp_source="mass-weighted from " + EU_2024 + "; texts on the earlier regulation give 631",
        safety_class="A1", lower_flammability_kg_m3=0.0, safety_source="ISO 817 class, from memory"),
}


def rounded(value, digits=9):
    return float(f"{value:.{digits}g}")


class Fluid:
    """One refrigerant, enthalpy 200 kJ/kg and entropy 1 kJ/(kg K) for saturated liquid at 0 deg C."""

    def __init__(self, spec):
        self.state = cp.AbstractState("HEOS", spec["backend"])
        self.mixture = "mass_fractions" in spec
        if self.mixture:
            self.state.set_mass_fractions(spec["mass_fractions"])
        self.state.update(cp.QT_INPUTS, 0.0, 273.15)
        self.h_shift = 200e3 - self.state.hmass()
        self.s_shift = 1000.0 - self.state.smass()

    def _now(self):
        s = self.state
        return dict(p=s.p(), t=s.T(), rho=s.rhomass(), h=s.hmass() + self.h_shift, s=s.smass() + self.s_shift)

    def saturated(self, temperature_c, quality):
        self.state.unspecify_phase()
        try:
            self.state.update(cp.QT_INPUTS, quality, temperature_c + 273.15)
        except ValueError:
            self._saturated_from_below(temperature_c, quality)
        return self._now()

    def _saturated_from_below(self, temperature_c, quality):
        """The mixture solver misses a few points near 79 deg C: start it from the solution 2 K below."""
        state = self.state
        state.update(cp.QT_INPUTS, quality, temperature_c - 2.0 + 273.15)
        guess = cp.PyGuessesStructure()
        guess.T, guess.p = temperature_c + 273.15, state.p() * 1.045
        guess.rhomolar_liq = state.saturated_liquid_keyed_output(cp.iDmolar)
        guess.rhomolar_vap = state.saturated_vapor_keyed_output(cp.iDmolar)
        guess.x, guess.y = state.mole_fractions_liquid(), state.mole_fractions_vapor()
        state.update_with_guesses(cp.QT_INPUTS, quality, temperature_c + 273.15, guess)

    def vapour(self, saturation_c, superheat_k):
        dew = self.saturated(saturation_c, 1.0)
        if superheat_k <= 0.0:
            return dew
        self.state.specify_phase(cp.iphase_gas)
        self.state.update(cp.PT_INPUTS, dew["p"], saturation_c + superheat_k + 273.15)
        return self._now()

    def isentropic(self, entropy, condensing_c):
        """Bisection on superheat: works for the mixture, too, for which CoolProp has no P,S flash."""
        low, high = 0.0, VAP_LAST_C - condensing_c
        if not self.vapour(condensing_c, low)["s"] <= entropy <= self.vapour(condensing_c, high)["s"]:
            return None
        for _ in range(60):
            mid = 0.5 * (low + high)
            if self.vapour(condensing_c, mid)["s"] < entropy:
                low = mid
            else:
                high = mid
        return self.vapour(condensing_c, 0.5 * (low + high))


def critical(fluid):
    if not fluid.mixture:
        return fluid.state.T_critical() - 273.15, fluid.state.p_critical()
    points = fluid.state.all_critical_points()
    stable = [p for p in points if p.stable] or list(points)
    return stable[0].T - 273.15, stable[0].p


def table(name, spec, fluid):
    if critical(fluid)[0] < SAT_LAST_C + 5.0:  # past the critical point CoolProp gives numbers that mean nothing
        sys.exit(f"{name}: critical at {critical(fluid)[0]:.1f} deg C, too near to the tables' end at {SAT_LAST_C} deg C")
    count = round((SAT_LAST_C - SAT_FIRST_C) / SAT_STEP_K) + 1
    temperatures = [SAT_FIRST_C + SAT_STEP_K * i for i in range(count)]
    liquid = [fluid.saturated(t, 0.0) for t in temperatures]
    vapour = [fluid.saturated(t, 1.0) for t in temperatures]
    rows = round((SAT_LAST_C - SAT_FIRST_C) / VAP_STEP_K) + 1
    grid = []
    for i in range(rows):
        saturation = SAT_FIRST_C + VAP_STEP_K * i
        shares = [(j / (VAP_COLUMNS - 1)) ** 2 for j in range(VAP_COLUMNS)]
        grid.append([fluid.vapour(saturation, (VAP_LAST_C - saturation) * share) for share in shares])
    critical_c, critical_pa = critical(fluid)
    keep = {k: v for k, v in spec.items() if k not in ("backend", "mass_fractions", "equation")}
    return dict(
        schema=1, name=name, made_by="tests/reference/make_refrigerants.py",
        source=f"{spec['equation']}; CoolProp {CoolProp.__version__}", **keep,
        critical_c=rounded(critical_c), critical_pressure_pa=rounded(critical_pa, 7),
        saturation=dict(
            first_c=SAT_FIRST_C, step_k=SAT_STEP_K,
            pressure_pa=[rounded(v["p"]) for v in vapour],
            liquid_density_kg_m3=[rounded(v["rho"]) for v in liquid],
            vapour_density_kg_m3=[rounded(v["rho"]) for v in vapour],
            liquid_enthalpy_j_kg=[rounded(v["h"]) for v in liquid],
            vapour_enthalpy_j_kg=[rounded(v["h"]) for v in vapour]),
        vapour=dict(
            first_c=SAT_FIRST_C, step_k=VAP_STEP_K, last_temperature_c=VAP_LAST_C, columns=VAP_COLUMNS,
            pressure_over_density_j_kg=[[rounded(v["p"] / v["rho"]) for v in row] for row in grid],
            enthalpy_j_kg=[[rounded(v["h"]) for v in row] for row in grid],
            entropy_j_kgk=[[rounded(v["s"]) for v in row] for row in grid]))


def test_values(fluid, rng):
    values = dict(saturation=[], vapour=[], isentropic=[])
    for _ in range(60):
        t = round(rng.uniform(SAT_FIRST_C, SAT_LAST_C), 3)
        liquid, vapour = fluid.saturated(t, 0.0), fluid.saturated(t, 1.0)
        values["saturation"].append([t] + [rounded(v, 10) for v in (
            vapour["p"], liquid["rho"], vapour["rho"], liquid["h"], vapour["h"])])
    for _ in range(120):
        t = round(rng.uniform(SAT_FIRST_C, SAT_LAST_C), 3)
        superheat = round((VAP_LAST_C - t) * rng.random() ** 2, 3)
        v = fluid.vapour(t, superheat)
        values["vapour"].append([t, superheat] + [rounded(x, 10) for x in (v["rho"], v["h"], v["s"])])
    while len(values["isentropic"]) < 60:
        evaporating, superheat = round(rng.uniform(-25, 25), 3), round(rng.uniform(3, 12), 3)
        condensing = round(rng.uniform(evaporating + 8, 78), 3)
        suction = fluid.vapour(evaporating, superheat)
        outlet = fluid.isentropic(suction["s"], condensing)
        if outlet is None:
            continue
        values["isentropic"].append([evaporating, superheat, condensing, rounded(suction["s"], 10),
                                     rounded(outlet["h"], 10), rounded(outlet["t"] - 273.15, 10)])
    return values


def numbers(value):
    """Every number of a JSON value, in order, and everything else as it stands."""
    if isinstance(value, dict):
        for key in sorted(value):
            yield key
            yield from numbers(value[key])
    elif isinstance(value, list):
        for item in value:
            yield from numbers(item)
    else:
        yield value


def same(made, committed):
    """Equal but for the last digits, which differ between machines' maths libraries."""
    made, committed = list(numbers(json.loads(made))), list(numbers(json.loads(committed)))
    if len(made) != len(committed):
        return False
    for a, b in zip(made, committed):
        if isinstance(a, (int, float)) and isinstance(b, (int, float)):
            if abs(a - b) > 1e-7 * max(abs(a), abs(b), 1e-3):
                return False
        elif a != b:
            return False
    return True


def keep(path, text, check):
    """Writes the file, or with `check` compares with what is committed; returns whether it is as committed."""
    if not check:
        path.write_text(text)
        return True
    if same(text, path.read_text()):
        print(f"{path.name}: reproduced with CoolProp {CoolProp.__version__}")
        return True
    print(f"{path.name}: differs from what CoolProp {CoolProp.__version__} gives")
    return False


def main():
    check = "--check" in sys.argv[1:]
    good = True
    rng = random.Random(SEED)
    out = dict(made_by="tests/reference/make_refrigerants.py", coolprop=CoolProp.__version__, seed=SEED, columns=dict(
        saturation="temperature_c, pressure_pa, liquid and vapour density kg/m3, liquid and vapour enthalpy J/kg",
        vapour="saturation_c, superheat_k, density kg/m3, enthalpy J/kg, entropy J/(kg K)",
        isentropic="evaporating_c, superheat_k, condensing_c, suction entropy, outlet enthalpy J/kg, outlet deg C"),
        fluids={})
    for name, spec in FLUIDS.items():
        fluid = Fluid(spec)
        text = json.dumps(table(name, spec, fluid), separators=(",", ":"))
        good &= keep(ROOT / "resources" / "refrigerants" / f"{name}.json", text + "\n", check)
        out["fluids"][name] = test_values(fluid, rng)
    target = ROOT / "tests" / "reference" / "coolprop_values.json"
    good &= keep(target, json.dumps(out, separators=(",", ":")) + "\n", check)
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
