#!/usr/bin/env python3
"""Writes tests/reference/fluids_values.json: pressure losses of refrigerant lines and what they need, from outside.

    python3 -m venv .venv && .venv/bin/pip install -r tests/reference/requirements-fluids.txt
    .venv/bin/python tests/reference/fluids_values.py            writes
    .venv/bin/python tests/reference/fluids_values.py --check    compares with what is committed
None of these values is a measurement. Temperatures deg C, everything else SI.
"""

import json
import pathlib
import sys
from importlib.metadata import version

import CoolProp.CoolProp as cp
from fluids.friction import Churchill_1977, Colebrook
from fluids.two_phase import Muller_Steinhagen_Heck

TARGET = pathlib.Path(__file__).resolve().parent / "fluids_values.json"
LIBRARIES = ("CoolProp", "fluids")
KELVIN = 273.15
REFRIGERANTS = {"R134a": "R134a", "R290": "Propane", "R1234yf": "R1234yf"}
ROUGHNESS = 1.5e-6


def row(*values):
    return [float(f"{v:.8g}") for v in values]


def liquid():
    return {name: [row(t, cp.PropsSI("V", "T", t + KELVIN, "Q", 0, fluid), cp.PropsSI("D", "T", t + KELVIN, "Q", 0, fluid))
                   for t in range(-40, 76, 5)] for name, fluid in REFRIGERANTS.items()}


def vapour():
    out = {}
    for name, fluid in REFRIGERANTS.items():
        out[name] = []
        for t in range(-40, 36, 5):
            pressure = cp.PropsSI("P", "T", t + KELVIN, "Q", 1, fluid)
            for superheat in (1.0, 5.0, 12.0, 20.0):
                at = ("T", t + KELVIN + superheat, "P", pressure, fluid)
                out[name].append(row(t, superheat, cp.PropsSI("V", *at), cp.PropsSI("D", *at)))
    return out


def two_phase():
    """fluids takes its friction factors from Colebrook: within a few per cent of Churchill's."""
    rows = {"air_water": [row(0.6, 0.1, 915.0, 2.67, 180e-6, 14e-6, 0.05, 0.0,
                              Muller_Steinhagen_Heck(0.6, 0.1, 915.0, 2.67, 180e-6, 14e-6, 0.05, 0.0))]}
    for name, fluid in REFRIGERANTS.items():
        rows[name] = []
        for t in (-20, 0, 20):
            rho = [cp.PropsSI("D", "T", t + KELVIN, "Q", q, fluid) for q in (0, 1)]
            mu = [cp.PropsSI("V", "T", t + KELVIN, "Q", q, fluid) for q in (0, 1)]
            for bore in (4.75e-3, 7.92e-3):
                for flow in (0.003, 0.010):
                    for x in (0.0, 0.1, 0.3, 0.6, 1.0):
                        loss = Muller_Steinhagen_Heck(flow, x, *rho, *mu, bore, ROUGHNESS)
                        rows[name].append(row(flow, x, *rho, *mu, bore, ROUGHNESS, loss))
    return rows


def single_phase():
    """Metres of copper tube: flow, density, viscosity, bore, loss a metre by Churchill 1977 and by Colebrook."""
    out = {}
    for name, fluid in REFRIGERANTS.items():
        out[name] = []
        for t, quality, bore in ((40, 0, 4.75e-3), (25, 0, 7.92e-3), (-20, 1, 11.1e-3), (0, 1, 11.1e-3), (15, 1, 7.92e-3)):
            rho, mu = (cp.PropsSI(k, "T", t + KELVIN, "Q", quality, fluid) for k in ("D", "V"))
            for flow in (0.002, 0.005, 0.010):
                area = 3.141592653589793 / 4 * bore**2
                reynolds = flow / area * bore / mu
                one = 0.5 * (flow / area)**2 / rho / bore
                out[name].append(row(flow, rho, mu, bore, one * Churchill_1977(reynolds, ROUGHNESS / bore),
                                     one * Colebrook(reynolds, ROUGHNESS / bore) if reynolds > 4000 else 0.0))
    return out


COLUMNS = dict(
    liquid="temperature, viscosity and density of saturated liquid",
    vapour="saturation temperature, superheat, viscosity, density",
    two_phase="flow, quality, densities of liquid and vapour, their viscosities, bore, roughness, loss a metre",
    single_phase="flow, density, viscosity, bore, loss a metre by Churchill 1977 and Colebrook (0: not turbulent); "
                 "roughness 1.5e-6")


def same(made, committed):
    if isinstance(made, dict):
        return made.keys() == committed.keys() and all(same(made[k], committed[k]) for k in made)
    if isinstance(made, list):
        return len(made) == len(committed) and all(same(a, b) for a, b in zip(made, committed))
    if isinstance(made, float):
        return abs(made - committed) <= 1e-6 * max(abs(made), abs(committed), 1e-9)
    return made == committed


def main():
    out = dict(made_by="tests/reference/fluids_values.py", versions={name: version(name) for name in LIBRARIES},
               columns=COLUMNS, liquid=liquid(), vapour=vapour(), two_phase=two_phase(), single_phase=single_phase())
    text = json.dumps(out, separators=(",", ":")) + "\n"
    if "--check" not in sys.argv[1:]:
        TARGET.write_text(text)
        return 0
    good = same(json.loads(text), json.loads(TARGET.read_text()))
    print("fluids_values.json:", "reproduced" if good else "differs", "with", out["versions"])
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
