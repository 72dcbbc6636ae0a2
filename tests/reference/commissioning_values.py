#!/usr/bin/env python3
"""Writes tests/reference/commissioning_values.json: outside values that the verdicts on readings rest on.

    python3 -m venv .venv && .venv/bin/pip install -r tests/reference/requirements-heat.txt
    .venv/bin/python tests/reference/commissioning_values.py            writes
    .venv/bin/python tests/reference/commissioning_values.py --check    compares with what is committed
None of these values is a measurement. Temperatures deg C, everything else SI.
"""

import json
import math
import pathlib
import sys
from importlib.metadata import version

import CoolProp.CoolProp as cp
import iapws._iapws
import scipy.constants

TARGET = pathlib.Path(__file__).resolve().parent / "commissioning_values.json"
LIBRARIES = ("CoolProp", "iapws", "scipy")
KELVIN = 273.15


def row(*values):
    return [float(f"{v:.9g}") for v in values]


def span(first, last, step):
    return [first + step * i for i in range(round((last - first) / step) + 1)]


def nitrogen_compressibility():
    """Span, Lemmon, Jacobsen, Wagner, Yokozeki 2000, the equation of state that NIST's REFPROP has, too. A full grid:
    the simulated installations of tests/core/commissioning take their gas from it."""
    temperatures = span(-40, 80, 5)
    pressures = [1e4] + [1e5 * p for p in span(1, 45, 2)]
    return dict(temperature_c=temperatures, pressure_pa=pressures,
                z=[row(*[cp.PropsSI("Z", "T", t + KELVIN, "P", p, "Nitrogen") for t in temperatures]) for p in pressures])


def nitrogen_viscosity():
    """Lemmon and Jacobsen 2004, at one bar and at 25 bar: the latter for what pressure adds."""
    return [row(t, *[cp.PropsSI("V", "T", t + KELVIN, "P", p, "Nitrogen") for p in (1e5, 25e5)]) for t in span(-20, 60, 5)]


def sublimation_pa(temperature_c):
    """IAPWS R14-08(2011), equation 6, written out: triple point 273.16 K and 611.657 Pa."""
    theta = (temperature_c + KELVIN) / 273.16
    a = (-0.212144006e2, 0.273203819e2, -0.610598130e1)
    b = (0.333333333e-2, 0.120666667e1, 0.170333333e1)
    pressure = 611.657 * math.exp(sum(ai * theta**bi for ai, bi in zip(a, b)) / theta)
    assert abs(1e6 * iapws._iapws._Sublimation_Pressure(temperature_c + KELVIN) / pressure - 1.0) < 1e-8
    return pressure


def vapour():
    """Over water: IAPWS-95. The release's own check value of ice: 8.94735 Pa at 230 K."""
    assert abs(sublimation_pa(230.0 - KELVIN) / 8.94735 - 1.0) < 1e-5
    return dict(over_water=[row(t, cp.PropsSI("P", "T", t + KELVIN, "Q", 0, "Water")) for t in [0.01] + span(1, 60, 1)],
                over_ice=[row(t, sublimation_pa(t)) for t in span(-40, -1, 1)])


def leak():
    """What turns a flow of nitrogen or air into R134a lost at 20 deg C: saturation pressure, viscosity of its vapour
    there, molar mass; viscosity of nitrogen and of air; ideal-gas kilogram of R134a a Pa m3."""
    t = 20.0 + KELVIN
    molar_mass = cp.PropsSI("M", "R134a")
    return dict(saturation_pa=cp.PropsSI("P", "T", t, "Q", 1, "R134a"), vapour_viscosity=cp.PropsSI("V", "T", t, "Q", 1, "R134a"),
                thin_viscosity=cp.PropsSI("V", "T", t, "P", 101325.0, "R134a"), molar_mass=molar_mass,
                nitrogen_viscosity=cp.PropsSI("V", "T", t, "P", 1e5, "Nitrogen"), air_viscosity=cp.PropsSI("V", "T", t, "P", 1e5, "Air"),
                kg_per_pa_m3=molar_mass / (scipy.constants.R * t))


def units():
    c = scipy.constants
    return dict(torr=c.torr, mm_hg=c.mmHg, psi=c.psi, bar=c.bar, atm=c.atm, micron=1e-3 * c.mmHg,
                fahrenheit_212=c.convert_temperature(212.0, "F", "C"), fahrenheit_minus_40=c.convert_temperature(-40.0, "F", "C"))


COLUMNS = dict(
    nitrogen_compressibility="z: a row for each pressure, a column for each temperature",
    nitrogen_viscosity="temperature, viscosity at 1 bar and at 25 bar",
    vapour="temperature, pressure")


def same(made, committed):
    if isinstance(made, dict):
        return made.keys() == committed.keys() and all(same(made[k], committed[k]) for k in made)
    if isinstance(made, list):
        return len(made) == len(committed) and all(same(a, b) for a, b in zip(made, committed))
    if isinstance(made, float):
        return abs(made - committed) <= 1e-7 * max(abs(made), abs(committed), 1e-9)
    return made == committed


def main():
    out = dict(made_by="tests/reference/commissioning_values.py", versions={name: version(name) for name in LIBRARIES},
               columns=COLUMNS, nitrogen_compressibility=nitrogen_compressibility(),
               nitrogen_viscosity=nitrogen_viscosity(), vapour=vapour(), leak=leak(), units=units())
    text = json.dumps(out, separators=(",", ":")) + "\n"
    if "--check" not in sys.argv[1:]:
        TARGET.write_text(text)
        return 0
    good = same(json.loads(text), json.loads(TARGET.read_text()))
    print("commissioning_values.json:", "reproduced" if good else "differs", "with", out["versions"])
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
