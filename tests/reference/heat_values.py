#!/usr/bin/env python3
"""Writes tests/reference/heat_values.json: outside values for the heat side, from public libraries.

    python3 -m venv .venv && .venv/bin/pip install -r tests/reference/requirements-heat.txt
    .venv/bin/python tests/reference/heat_values.py            writes
    .venv/bin/python tests/reference/heat_values.py --check    compares with what is committed
None of these values is a measurement. Temperatures deg C, everything else SI.
"""

import json
import math
import pathlib
import sys
from importlib.metadata import version

import CoolProp.CoolProp as cp
import fluids.friction
import ht.conv_external
import ht.conv_free_immersed
import iapws
import iapws._iapws
import psychrolib
import scipy.constants

TARGET = pathlib.Path(__file__).resolve().parent / "heat_values.json"
LIBRARIES = ("CoolProp", "fluids", "ht", "iapws", "psychrolib", "scipy")
ATMOSPHERE_PA = 101325.0
GRAVITY = 9.80665
KELVIN = 273.15
REFRIGERANTS = {"R134a": "R134a", "R290": "Propane", "R1234yf": "R1234yf"}


def rounded(value, digits=8):
    return float(f"{value:.{digits}g}")


def row(*values):
    return [None if v is None else rounded(v) for v in values]


def span(first, last, step):
    return [first + step * i for i in range(round((last - first) / step) + 1)]


def over_supercooled_water_pa(temperature_c):
    """Equal Gibbs energy of supercooled water (IAPWS G12-15) and of vapour (IAPWS-95), by bisection. The liquid's is
    summed from its entropy (Simpson) from the triple point: iapws 1.5.5 gives 'g' and 'h' there that do not fit 's'."""
    t, steps = temperature_c + KELVIN, 20
    step_k = (273.16 - t) / steps
    entropy = [iapws._iapws._Supercooled(t + step_k * i, ATMOSPHERE_PA * 1e-6)["s"] * 1e3 for i in range(steps + 1)]
    liquid = step_k / 3.0 * sum(s * (1 if i in (0, steps) else 4 if i % 2 else 2) for i, s in enumerate(entropy))
    vapour = cp.AbstractState("HEOS", "Water")
    vapour.specify_phase(cp.iphase_gas)

    def excess(pressure_pa):
        vapour.update(cp.PT_INPUTS, pressure_pa, t)
        return vapour.hmass() - t * vapour.smass() - liquid

    low, high = 10.0, 1000.0
    for _ in range(60):
        mid = math.sqrt(low * high)
        low, high = (mid, high) if excess(mid) < 0.0 else (low, mid)
    return math.sqrt(low * high)


def vapour_pressure():
    return dict(
        over_water=[row(t, cp.PropsSI("P", "T", t + KELVIN, "Q", 0, "Water")) for t in [0.01] + span(5, 50, 5)],
        over_ice=[row(t, 1e6 * iapws._iapws._Sublimation_Pressure(t + KELVIN)) for t in span(-40, 0, 5)],
        over_supercooled_water=[row(t, over_supercooled_water_pa(t)) for t in span(-20, 0, 5)])


def moist_air():
    """PsychroLib: ASHRAE Handbook Fundamentals 2017; below 0 deg C everything over ice."""
    psychrolib.SetUnitSystem(psychrolib.SI)
    rows = []
    for air in span(-20, 50, 5):
        for humidity in (0.3, 0.6, 0.9):
            for pressure in (ATMOSPHERE_PA, 85000.0):
                ratio = psychrolib.GetHumRatioFromRelHum(air, humidity, pressure)
                rows.append(row(air, pressure, psychrolib.GetVapPresFromRelHum(air, humidity),
                                psychrolib.GetTDewPointFromRelHum(air, humidity),
                                psychrolib.GetTWetBulbFromRelHum(air, humidity, pressure), ratio,
                                psychrolib.GetMoistAirEnthalpy(air, ratio)))
    return rows


def saturated_air():
    return [row(t, pressure, ratio, psychrolib.GetMoistAirEnthalpy(t, ratio))
            for t in span(-20, 50, 5) for pressure in (ATMOSPHERE_PA, 85000.0)
            for ratio in [psychrolib.GetSatHumRatio(t, pressure)]]


def latent():
    """Evaporation by IAPWS-95; sublimation: its vapour less ice (IAPWS R10-06, the same zero of enthalpy)."""
    def enthalpy(t, quality):
        return cp.PropsSI("H", "T", t + KELVIN, "Q", quality, "Water")

    rows = [row(t, enthalpy(t, 1) - enthalpy(t, 0)) for t in [0.01] + span(5, 50, 5)]
    vapour = cp.AbstractState("HEOS", "Water")
    vapour.specify_phase(cp.iphase_gas)
    for t in span(-20, -5, 5):
        pressure = 1e6 * iapws._iapws._Sublimation_Pressure(t + KELVIN)
        vapour.update(cp.PT_INPUTS, pressure, t + KELVIN)
        rows.append(row(t, vapour.hmass() - 1e3 * iapws._iapws._Ice(t + KELVIN, pressure * 1.001e-6)["h"]))
    return rows


def water():
    """IAPWS-95 by CoolProp; IAPWS-IF97 by iapws must agree, so that no slip in either stays unseen."""
    rows = []
    for t in span(5, 80, 5):
        rho, heat, enthalpy = (cp.PropsSI(k, "T", t + KELVIN, "P", ATMOSPHERE_PA, "Water") for k in ("D", "C", "H"))
        other = iapws.IAPWS97(T=t + KELVIN, P=ATMOSPHERE_PA * 1e-6)
        assert abs(other.rho / rho - 1.0) < 3e-5 and abs(other.h * 1e3 - enthalpy) < 100.0
        rows.append(row(t, rho, heat, enthalpy))
    return rows


def air(film_c):
    at = ("T", film_c + KELVIN, "P", ATMOSPHERE_PA, "Air")
    viscosity, conductivity, density, heat = (cp.PropsSI(k, *at) for k in ("V", "L", "D", "C"))
    return dict(nu=viscosity / density, k=conductivity, pr=viscosity * heat / conductivity,
                alpha=conductivity / density / heat, beta=1.0 / (film_c + KELVIN))


def forced():
    """One plate, film at 10 deg C: laminar throughout (Baehr, Stephan), turbulent from the edge (Schlichting)."""
    a, rows = air(10.0), []
    for length in (0.7, 1.0, 1.8, 2.6):
        for wind in (0.5, 1.0, 2.0, 3.0, 4.0, 5.0, 8.0):
            re = wind * length / a["nu"]
            rows.append(row(length, wind, re,
                            ht.conv_external.Nu_horizontal_plate_laminar_Baehr(re, a["pr"]) * a["k"] / length,
                            ht.conv_external.Nu_horizontal_plate_turbulent_Schlichting(re, a["pr"]) * a["k"] / length))
    return rows


def natural():
    """Air at 10 deg C. Vertical and inclined 45 deg: Churchill and Chu, the inclined one with g cos 45 (cold face up or
    warm face down). Horizontal plates 1.8 x 0.8 m: McAdams with the side of area over perimeter, warm face up (the same
    as cold face down) and warm face down."""
    rows = []
    for difference in (2.0, 5.0, 10.0, 20.0, 40.0):
        a = air(10.0 + 0.5 * difference)

        def grashof(length):
            return GRAVITY * a["beta"] * difference * length**3 / a["nu"]**2

        upright = ht.conv_free_immersed.Nu_vertical_plate_Churchill
        level = ht.conv_free_immersed.Nu_horizontal_plate_McAdams
        side = 1.8 * 0.8 / (2 * (1.8 + 0.8))
        h = [upright(a["pr"], grashof(0.8)) / 0.8, upright(a["pr"], grashof(0.8) * math.cos(math.pi / 4)) / 0.8]
        h += [level(a["pr"], grashof(side), buoyancy=up) / side for up in (True, False)]
        rows.append(row(difference, *[a["k"] * x for x in h]))
    return rows


def friction():
    return [row(re, rough, fluids.friction.Churchill_1977(re, rough), fluids.friction.Colebrook(re, rough))
            for rough in (0.0, 1.35e-4, 1e-3, 1e-2) for re in (500.0, 2e3, 4e3, 1e4, 5e4, 1.072e5, 1e6)]


def refrigerants():
    """Saturation in evaporator and condenser, and gas 5 K above it. R513A's mixture model has no viscosity."""
    out = {}
    for name, fluid in REFRIGERANTS.items():
        rows = []
        for t in span(-40, 80, 10):
            at = t + KELVIN
            pressure = cp.PropsSI("P", "T", at, "Q", 1, fluid)
            liquid, vapour = (cp.PropsSI("D", "T", at, "Q", q, fluid) for q in (0, 1))
            latent = cp.PropsSI("H", "T", at, "Q", 1, fluid) - cp.PropsSI("H", "T", at, "Q", 0, fluid)
            gas = [cp.PropsSI(k, "T", at + 5.0, "P", pressure, fluid) for k in ("D", "C", "V")]
            rows.append(row(t, pressure, liquid, vapour, latent, *gas))
        out[name] = rows
    return out


def compressor():
    """Mass flow and work at another suction superheat than the rating's, over those rated: Dabiri and Rice 1981 with
    F = 0.75, as public heat pump models state it (ACHP documentation, compressor)."""
    share, out = 0.75, {}
    for name, fluid in REFRIGERANTS.items():
        rows = []
        for te, tc in ((-20, 40), (-10, 55), (0, 45), (5, 65), (15, 35), (20, 60)):
            low, high = (cp.PropsSI("P", "T", t + KELVIN, "Q", 1, fluid) for t in (te, tc))

            def suction(superheat):
                state = ("T", te + KELVIN + superheat, "P", low, fluid)
                density, enthalpy, entropy = (cp.PropsSI(k, *state) for k in ("D", "H", "S"))
                return density, cp.PropsSI("H", "P", high, "S", entropy, fluid) - enthalpy

            for rated, own in ((10.0, 5.0), (20.0 - te, 5.0), (5.0, 12.0)):
                if rated < 1.0:
                    continue
                (rated_density, rated_work), (density, work) = suction(rated), suction(own)
                flow = 1.0 + share * (density / rated_density - 1.0)
                rows.append(row(te, tc, rated, own, flow, flow * work / rated_work))
        out[name] = rows
    return out


def constants():
    """CODATA as scipy has it; names as in core/quantity/constants.h."""
    c = scipy.constants
    return dict(stefan_boltzmann_w_m2k4=c.Stefan_Boltzmann, gravity_m_s2=c.g, kelvin_offset=c.zero_Celsius,
                standard_pressure_pa=c.atm)


COLUMNS = dict(
    vapour_pressure="temperature, pressure",
    moist_air="air, air pressure, vapour pressure, dew or frost point, wet bulb, humidity ratio, enthalpy",
    saturated_air="air, air pressure, humidity ratio, enthalpy",
    latent="temperature, latent heat (over ice below 0)",
    water="temperature, density, heat capacity, enthalpy",
    forced="length, wind, Reynolds number, laminar and turbulent coefficient",
    natural="difference, coefficients: vertical, inclined 45 deg, horizontal warm up, horizontal warm down",
    friction="Reynolds number, relative roughness, Churchill 1977, Colebrook (Darcy factors)",
    refrigerants="saturation, pressure, liquid density, vapour density, latent heat; gas 5 K above: density, heat "
                 "capacity, viscosity",
    compressor="evaporating, condensing, rated and own superheat, mass flow and work over those rated")


def same(made, committed):
    if isinstance(made, dict):
        return made.keys() == committed.keys() and all(same(made[k], committed[k]) for k in made)
    if isinstance(made, list):
        return len(made) == len(committed) and all(same(a, b) for a, b in zip(made, committed))
    if isinstance(made, float):
        return abs(made - committed) <= 1e-6 * max(abs(made), abs(committed), 1e-3)
    return made == committed


def main():
    out = dict(made_by="tests/reference/heat_values.py", versions={name: version(name) for name in LIBRARIES},
               columns=COLUMNS, constants=constants(), vapour_pressure=vapour_pressure(), moist_air=moist_air(),
               saturated_air=saturated_air(), latent=latent(), water=water(), forced=forced(), natural=natural(),
               friction=friction(), refrigerants=refrigerants(), compressor=compressor())
    text = json.dumps(out, separators=(",", ":")) + "\n"
    if "--check" not in sys.argv[1:]:
        TARGET.write_text(text)
        return 0
    good = same(json.loads(text), json.loads(TARGET.read_text()))
    print("heat_values.json:", "reproduced" if good else "differs", "with", out["versions"])
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
