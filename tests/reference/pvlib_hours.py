#!/usr/bin/env python3
"""Makes or checks pvlib_hours.json: every hour with the sun up of a real year by pvlib, for core/sky, core/sun and
core/weather.

    pvlib_hours.py            writes pvlib_hours.json beside this script
    pvlib_hours.py --check    computes everything again and compares with the committed file

Year, sun and convention are those of pvlib_year.py. Besides:
- light on two planes by three diffuse models;
- the split of global by Erbs and by DIRINT, both given the sun, extraterrestrial and standard pressure of the convention;
  hours in which the sun is up for a part get the global of that part, and the beam found counts for that part. DIRINT is
  called day by day with the hours of light only, so that the first and the last have one neighbour (eq. 3 of its authors);
- cloudless sky by Ineichen and Perez for a Linke turbidity by month, joined by straight lines between the middles of
  months, times the share of the hour with the sun up.
"""
import importlib.metadata
import json
import pathlib
import platform
import sys
import warnings

import numpy as np
import pandas as pd
import pvlib

import pvlib_year as base

HERE = pathlib.Path(__file__).resolve().parent
OUT = HERE / "pvlib_hours.json"
PLANES = [(35, 180), (90, 250)]
MODELS = ["isotropic", "haydavies", "perez"]
LINKE = [2.4, 2.6, 2.9, 3.1, 3.4, 3.7, 3.9, 3.8, 3.4, 3.0, 2.6, 2.4]  # invented
MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]


def read_dew_point():
    frame = pd.read_csv(pathlib.Path(pvlib.__file__).parent / "data" / "723170TYA.CSV", skiprows=1, encoding="latin-1")
    return frame["Dew-point (C)"].to_numpy(dtype=float)


def turbidity_of_hours():
    """At the middle of each hour of a year without 29 February."""
    ends = np.cumsum([0] + MONTH_DAYS)
    middles = 24.0 * 0.5 * (ends[:-1] + ends[1:])
    x = np.concatenate(([middles[-1] - 8760.0], middles, [middles[0] + 8760.0]))
    y = np.array([LINKE[-1]] + LINKE + [LINKE[0]])
    return np.interp(np.arange(8760) + 0.5, x, y)


def sun_shares(site, delta_t):
    """Moment and share of every hour: pvlib_year.sun_of_hours gives the middle of the part with the sun up."""
    moments, up = base.sun_of_hours(site, delta_t)
    start = pd.Timestamp(f"{base.YEAR}-01-01", tz="UTC").timestamp() - 3600.0 * site["utc_offset_h"]
    from_start = moments - (start + 3600.0 * np.arange(8760))
    # The middle lies before half past in hours that the sun leaves, after it in hours that it enters.
    share = np.where(from_start < 1800.0, 2.0 * from_start, 2.0 * (3600.0 - from_start)) / 3600.0
    return moments, up, np.where(up, share, 0.0)


def compute():
    site = base.read_tmy3()
    delta_t = base.delta_t_s(base.YEAR + 0.5)
    moments, up, share = sun_shares(site, delta_t)
    apparent, _, azimuth = base.positions(moments, site["lat"], site["lon"], site["altitude_m"], delta_t)
    up = up & (apparent < 90.0)
    hours = np.where(up)[0]
    days = pd.DatetimeIndex(pd.to_datetime(moments, unit="s", utc=True))
    extra = base.SOLAR_CONSTANT / pvlib.solarposition.nrel_earthsun_distance(days, delta_t=delta_t).to_numpy() ** 2
    air_mass = pvlib.atmosphere.get_relative_airmass(apparent, "kastenyoung1989")
    pressure = base.standard_pressure_pa(site["altitude_m"])
    columns = {"hour": hours, "apparent_zenith_deg": apparent[hours].round(5), "azimuth_deg": azimuth[hours].round(5)}

    sun = (apparent, azimuth, up, extra, air_mass)
    for tilt, plane_azimuth in PLANES:
        for model in MODELS:
            light = base.plane_light(site, tilt, plane_azimuth, model, sun)
            columns[f"{model}_{tilt}_{plane_azimuth}_w_m2"] = light[hours].round(3)

    # Both splits ask pvlib for the extraterrestrial of a day: the one of the convention is put in its place.
    ghi = site["ghi"][hours] / share[hours]
    index = days[hours]
    given = pd.Series(extra[hours], index=index)
    pvlib.irradiance.get_extra_radiation = lambda times, *_, **__: given.reindex(times).to_numpy()
    zenith = pd.Series(apparent[hours], index=index)
    ghi_series = pd.Series(ghi, index=index)
    erbs = pvlib.irradiance.erbs(ghi_series, zenith, index)
    columns["erbs_diffuse_w_m2"] = (erbs["dhi"].to_numpy() * share[hours]).round(3)
    dew_point = pd.Series(read_dew_point()[hours], index=index)
    known, unknown = [], []
    for day in np.unique(hours // 24):
        rows = np.where(hours // 24 == day)[0]
        part = (ghi_series.iloc[rows], zenith.iloc[rows], index[rows])
        known.append(pvlib.irradiance.dirint(*part, pressure=pressure, temp_dew=dew_point.iloc[rows]))
        unknown.append(pvlib.irradiance.dirint(*part, pressure=pressure))
    columns["dirint_beam_w_m2"] = (np.concatenate(known) * share[hours]).round(3)
    columns["dirint_beam_no_dew_point_w_m2"] = (np.concatenate(unknown) * share[hours]).round(3)

    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        clear = pvlib.clearsky.ineichen(apparent[hours], air_mass[hours] * pressure / 101325.0,
                                        turbidity_of_hours()[hours], site["altitude_m"], extra[hours])
    for name, ours in (("ghi", "global"), ("dni", "beam"), ("dhi", "diffuse")):
        columns[f"clear_{ours}_w_m2"] = (np.asarray(clear[name]) * share[hours]).round(3)

    rows = np.column_stack(list(columns.values()))
    assert np.isfinite(rows).all()
    return {
        "made_with": {name: importlib.metadata.version(name) for name in ("pvlib", "numpy", "pandas")}
                     | {"python": platform.python_version()},
        "convention": __doc__.split("Besides:")[1].strip(),
        "file": "723170TYA.CSV", "year": base.YEAR, "albedo": base.ALBEDO, "linke_turbidity": LINKE,
        "columns": list(columns),
        "rows": rows,
    }


def text_of(values):
    head = {k: v for k, v in values.items() if k != "rows"}
    lines = [json.dumps(head, indent=1)[:-2] + ",", ' "rows": [']
    number = lambda v: f"{v:.5f}".rstrip("0").rstrip(".")
    lines.append(",\n".join("[" + ",".join(number(v) for v in row) + "]" for row in values["rows"]))
    return "\n".join(lines) + "\n]}\n"


def main():
    values = compute()
    if "--check" not in sys.argv[1:]:
        OUT.write_text(text_of(values), encoding="utf-8")
        print(f"wrote {OUT.name}: {len(values['rows'])} hours, {len(values['columns'])} columns")
        return 0
    committed = json.loads(OUT.read_text(encoding="utf-8"))
    computed = json.loads(text_of(values))
    found = [k for k in committed if k not in ("rows", "made_with") and committed[k] != computed.get(k)]
    a, b = np.array(committed["rows"]), np.array(computed["rows"])
    if a.shape != b.shape:
        found.append(f"rows: {a.shape} committed, {b.shape} computed")
    else:
        # One unit of the last digit kept, from rounding on another machine.
        for i, k in zip(*np.where(np.abs(a - b) > 1.1e-3)):
            found.append(f"hour {int(a[i, 0])} {committed['columns'][k]}: {a[i, k]} committed, {b[i, k]} computed")
    for line in found[:20]:
        print(line, file=sys.stderr)
    print(f"{OUT.name}: {'differs' if found else 'reproduced'} with pvlib {pvlib.__version__}")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
