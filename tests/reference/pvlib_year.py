#!/usr/bin/env python3
"""Makes or checks pvlib_values.json: sun positions and light on planes by pvlib, for core/sun and core/sky.

    pvlib_year.py            writes pvlib_values.json beside this script
    pvlib_year.py --check    computes everything again and compares with the committed file

Packages: requirements-pvlib.txt (pinned). The weather year is the TMY3 file 723170 (Greensboro) in pvlib's own data
folder.

Convention, the same as in core/sky/prepared.h:
- rows are hours of local standard time of the year 2027, row i covering [i, i + 1);
- the sun of an hour stands at its middle; in hours with sunrise or sunset (centre of the disc, as seen) in the middle of
  the part with the sun up; beam is 0 with the sun down in the whole hour;
- refraction for the standard atmosphere at the site's height, 12 deg C, and pvlib's 34' at the horizon;
- extraterrestrial 1361 W/m2 / r^2; air mass by Kasten and Young 1989 from the zenith as seen; albedo 0.2;
- with the sun down the diffuse light is isotropic in every model; without diffuse light there is none on the plane.
"""
import csv
import importlib.metadata
import json
import pathlib
import platform
import sys

import numpy as np
import pandas as pd
import pvlib

HERE = pathlib.Path(__file__).resolve().parent
OUT = HERE / "pvlib_values.json"
YEAR = 2027
ALBEDO = 0.2
SOLAR_CONSTANT = 1361.0
ORIENTATIONS = [(0, 180), (35, 180), (90, 90), (45, 225), (90, 180), (60, 0), (20, 135), (90, 0)]
HOUR_SAMPLES = range(8, 8760, 53)
# lat, lon, altitude: both hemispheres, polar, tropical, near the date line
SITES = [(36.1, -79.95, 273.0), (47.4, 9.2, 520.0), (-35.0, 149.0, 600.0), (69.6, 18.9, 10.0), (1.3, 103.8, 15.0),
         (-77.8, 166.7, 20.0), (55.3, -179.5, 7.0)]


def standard_pressure_pa(altitude_m):
    return 101325.0 * (1.0 - 2.25577e-5 * altitude_m) ** 5.25588


def delta_t_s(year):
    """Espenak and Meeus 2006, as pvlib has it, at a fractional year."""
    return float(pvlib.spa.calculate_deltat(int(year), (year - int(year)) * 12 + 0.5))


def positions(unix_s, lat, lon, altitude_m, delta_t):
    """apparent zenith, zenith, azimuth (deg)"""
    out = pvlib.spa.solar_position(np.asarray(unix_s, dtype=float), lat, lon, altitude_m,
                                   standard_pressure_pa(altitude_m) / 100.0, 12.0, delta_t, 0.5667, numthreads=1)
    return out[0], out[1], out[4]


def random_positions():
    """Moments over 1950..2050 at several places."""
    generator = np.random.default_rng(20240229)
    rows = []
    for lat, lon, altitude_m in SITES:
        for _ in range(40):
            unix_s = int(generator.integers(-631152000, 2556144000))
            year = pd.Timestamp(unix_s, unit="s").year + 0.5
            delta_t = delta_t_s(year)
            apparent, zenith, azimuth = positions([unix_s], lat, lon, altitude_m, delta_t)
            rows.append([lat, lon, altitude_m, unix_s, round(delta_t, 6), round(float(apparent[0]), 7),
                         round(float(zenith[0]), 7), round(float(azimuth[0]), 7)])
    return rows


def read_tmy3():
    path = pathlib.Path(pvlib.__file__).parent / "data" / "723170TYA.CSV"
    with open(path, newline="", encoding="latin-1") as file:
        rows = list(csv.reader(file))
    site = rows[0]
    names = rows[1]
    data = rows[2:]
    assert len(data) == 8760
    column = lambda name: np.array([float(r[names.index(name)]) for r in data])
    return {
        "utc_offset_h": float(site[3]), "lat": float(site[4]), "lon": float(site[5]), "altitude_m": float(site[6]),
        "ghi": column("GHI (W/m^2)"), "dni": column("DNI (W/m^2)"), "dhi": column("DHI (W/m^2)"),
    }


def sun_of_hours(site, delta_t):
    """Moment that stands for each hour, and whether the sun is up in it."""
    start = pd.Timestamp(f"{YEAR}-01-01", tz="UTC").timestamp() - 3600.0 * site["utc_offset_h"]
    edges = start + 3600.0 * np.arange(8761)
    elevation = lambda t: 90.0 - positions(t, site["lat"], site["lon"], site["altitude_m"], delta_t)[0]
    at_edges = elevation(edges)
    first, last = edges[:-1].copy(), edges[1:].copy()
    up_first, up_last = at_edges[:-1] > 0.0, at_edges[1:] > 0.0
    for rising in (True, False):
        rows = np.where((up_last & ~up_first) if rising else (up_first & ~up_last))[0]
        low, high = first[rows].copy(), last[rows].copy()
        for _ in range(20):
            middle = 0.5 * (low + high)
            up = elevation(middle) > 0.0
            take_high = up if rising else ~up
            high = np.where(take_high, middle, high)
            low = np.where(take_high, low, middle)
        if rising:
            first[rows] = 0.5 * (low + high)
        else:
            last[rows] = 0.5 * (low + high)
    return 0.5 * (first + last), up_first | up_last


def plane_light(site, tilt, azimuth, model, sun):
    apparent, sun_azimuth, up, extra, air_mass = sun
    dni = np.where(up, site["dni"], 0.0)
    dhi, ghi = site["dhi"], site["ghi"]
    cos_aoi = pvlib.irradiance.aoi_projection(tilt, azimuth, apparent, sun_azimuth)
    beam = dni * np.maximum(cos_aoi, 0.0)
    iso = pvlib.irradiance.isotropic(tilt, dhi)
    if model == "isotropic":
        sky = iso
    elif model == "haydavies":
        sky = pvlib.irradiance.haydavies(tilt, azimuth, dhi, dni, extra, apparent, sun_azimuth)
    else:
        with np.errstate(all="ignore"):
            sky = pvlib.irradiance.perez(tilt, azimuth, dhi, dni, extra, apparent, sun_azimuth, air_mass)
    sky = np.where(up, sky, iso)
    sky = np.where(dhi > 0.0, sky, 0.0)  # no diffuse light on the horizontal: none on the plane (Perez divides by it)
    assert np.isfinite(sky).all()
    return beam + sky + pvlib.irradiance.get_ground_diffuse(tilt, ghi, albedo=ALBEDO)


def compute():
    site = read_tmy3()
    delta_t = delta_t_s(YEAR + 0.5)
    moments, up = sun_of_hours(site, delta_t)
    apparent, zenith, azimuth = positions(moments, site["lat"], site["lon"], site["altitude_m"], delta_t)
    up = up & (apparent < 90.0)
    days = pd.DatetimeIndex(pd.to_datetime(moments, unit="s", utc=True))
    distance = pvlib.solarposition.nrel_earthsun_distance(days, delta_t=delta_t).to_numpy()
    extra = SOLAR_CONSTANT / distance ** 2
    air_mass = pvlib.atmosphere.get_relative_airmass(apparent, "kastenyoung1989")
    sun = (apparent, azimuth, up, extra, air_mass)

    sums, hours = [], []
    for model in ("isotropic", "haydavies", "perez"):
        for tilt, plane_azimuth in ORIENTATIONS:
            light = plane_light(site, tilt, plane_azimuth, model, sun)
            sums.append({"model": model, "tilt_deg": tilt, "azimuth_deg": plane_azimuth,
                         "kwh_m2": round(float(light.sum()) / 1000.0, 4)})
            if (tilt, plane_azimuth) in ((35, 180), (90, 90), (45, 225)):
                hours.append({"model": model, "tilt_deg": tilt, "azimuth_deg": plane_azimuth,
                              "w_m2": [round(float(light[i]), 4) for i in HOUR_SAMPLES]})
    return {
        "made_with": {name: importlib.metadata.version(name) for name in ("pvlib", "numpy", "pandas")}
                     | {"python": platform.python_version()},
        "convention": __doc__.split("Convention,")[1].strip(),
        "positions_columns": ["latitude_deg", "longitude_deg", "altitude_m", "unix_s", "delta_t_s",
                              "apparent_zenith_deg", "zenith_deg", "azimuth_deg"],
        "positions": random_positions(),
        "tmy3": {
            "file": "723170TYA.CSV", "year": YEAR, "albedo": ALBEDO,
            "sampled_hours": list(HOUR_SAMPLES),
            "apparent_zenith_deg": [round(float(apparent[i]), 6) for i in HOUR_SAMPLES],
            "azimuth_deg": [round(float(azimuth[i]), 6) for i in HOUR_SAMPLES],
            "plane_year": sums,
            "plane_hours": hours,
        },
    }


def differences(a, b, path, found):
    if isinstance(a, dict) and isinstance(b, dict):
        if a.keys() != b.keys():
            found.append(f"{path}: other fields")
            return
        for key in a:
            if path or key != "made_with":
                differences(a[key], b[key], f"{path}/{key}", found)
    elif isinstance(a, list) and isinstance(b, list):
        if len(a) != len(b):
            found.append(f"{path}: other length")
            return
        for i, (x, y) in enumerate(zip(a, b)):
            differences(x, y, f"{path}[{i}]", found)
    elif isinstance(a, (int, float)) and isinstance(b, (int, float)):
        # One unit of the last digit kept, from rounding on another machine.
        if abs(a - b) > 1.1e-4:
            found.append(f"{path}: {a} committed, {b} computed")
    elif a != b:
        found.append(f"{path}: {a!r} committed, {b!r} computed")


def main():
    values = compute()
    if "--check" not in sys.argv[1:]:
        OUT.write_text(json.dumps(values, indent=1, allow_nan=False) + "\n", encoding="utf-8")
        print(f"wrote {OUT.name}: {len(values['positions'])} positions, {len(values['tmy3']['plane_year'])} planes")
        return 0
    committed = json.loads(OUT.read_text(encoding="utf-8"))
    found = []
    differences(committed, json.loads(json.dumps(values)), "", found)
    for line in found[:20]:
        print(line, file=sys.stderr)
    print(f"pvlib_values.json: {'differs' if found else 'reproduced'} with pvlib {pvlib.__version__}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
