#!/usr/bin/env python3
"""Times the sun and sky against pvlib in one run on one core, and prints a table of times and ratios.

    bash tests/run.sh bench --benchmark_filter=none        # builds .build/release/tests/bench/warmgable_bench
    python3 -m venv .cache/peer && .cache/peer/bin/pip install --only-binary :all: -r tests/bench/requirements-peer.txt
    .cache/peer/bin/python tests/bench/compare_pvlib.py [--core N] [--repeats N]

requirements-peer.txt pins numpy 1.24.4, the last whose sine and cosine in double precision use AVX-512: with the 1.26.4 of
the reference values pvlib's sun takes many times as long, and would be no honest peer. pvlib is given plain numpy arrays,
its fastest way in, and works without numba. Both sides get one core by sched_setaffinity. Each figure is the least processor time of several repeats, ours by Google Benchmark: other
processes on the machine then weigh least. Grids give pvlib the sun, extraterrestrial and air mass ready made, as its
interface wants them; ours starts from a prepared weather year, and in the row `from light` from sun vectors and the
weather's figures.
"""
import argparse
import json
import os
import pathlib
import platform
import subprocess
import sys
import time
import warnings

for variable in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[variable] = "1"

import numpy as np
import pvlib

ROOT = pathlib.Path(__file__).resolve().parents[2]
BENCH = ROOT / ".build" / "release" / "tests" / "bench" / "warmgable_bench"
START = 1798761600  # 2027-01-01T00:00Z
LAT, LON, ALTITUDE = 47.4, 9.2, 520.0
ALBEDO = 0.2


def least_ms(work, repeats):
    best = 1e9
    for _ in range(repeats):
        begin = time.process_time()
        work()
        best = min(best, time.process_time() - begin)
    return 1e3 * best


def positions(unix_s):
    return pvlib.spa.solar_position(unix_s, LAT, LON, ALTITUDE, 952.0, 12.0, 73.0, 0.5667, numthreads=1)


def light_year():
    """A year of plain light for the sun at half past every hour: clear sky dimmed by a fixed pattern."""
    out = positions(START + 1800.0 + 3600.0 * np.arange(8760))
    zenith, azimuth = out[0], out[4]
    up = np.maximum(np.cos(np.radians(zenith)), 0.0)
    clear = 1098.0 * up * np.exp(-0.059 / np.maximum(up, 1e-3))
    ghi = clear * (0.55 + 0.4 * np.sin(0.37 * np.arange(8760)))
    dhi = np.minimum(ghi, 0.3 * ghi + 20.0)
    dni = np.where(up > 0.02, (ghi - dhi) / np.maximum(up, 0.02), 0.0)
    extra = np.full(8760, 1361.0)
    air_mass = pvlib.atmosphere.get_relative_airmass(zenith)
    return zenith, azimuth, ghi, dni, dhi, extra, air_mass


def orientation(light, tilt, azimuth, model):
    zenith, sun_azimuth, ghi, dni, dhi, extra, air_mass = light
    beam = dni * np.maximum(pvlib.irradiance.aoi_projection(tilt, azimuth, zenith, sun_azimuth), 0.0)
    if model == "haydavies":
        sky = pvlib.irradiance.haydavies(tilt, azimuth, dhi, dni, extra, zenith, sun_azimuth)
    else:
        sky = pvlib.irradiance.perez(tilt, azimuth, dhi, dni, extra, zenith, sun_azimuth, air_mass)
    return beam + np.nan_to_num(sky) + pvlib.irradiance.get_ground_diffuse(tilt, ghi, albedo=ALBEDO)


def grid(light, model):
    return np.array([[orientation(light, tilt, azimuth, model).sum() for azimuth in range(0, 361, 5)]
                     for tilt in range(0, 91, 5)])


def grid_in_blocks(light, model):
    """The same with all azimuths of a tilt as one array: fewer calls, larger arrays."""
    wide = [a[:, None] for a in light]
    azimuths = np.arange(0.0, 361.0, 5.0)[None, :]
    return np.array([orientation(wide, float(tilt), azimuths, model).sum(axis=0) for tilt in range(0, 91, 5)])


def numpy_units():
    from numpy.core import _multiarray_umath
    on = [name for name, has in _multiarray_umath.__cpu_features__.items() if has]
    dispatch = [name for name in _multiarray_umath.__cpu_dispatch__ if name in on]
    return any("AVX512" in name for name in dispatch), dispatch


def cosine_ns():
    x = np.linspace(0.0, 1000.0, 100000)
    return 1e6 * least_ms(lambda: np.cos(x), 20) / len(x)


def ours(repeats):
    names = "sun_positions_year|sun_positions_minutes|sun_of_weather_year|orientation_"
    result = subprocess.run([str(BENCH), "--benchmark_format=json", f"--benchmark_filter={names}",
                             f"--benchmark_repetitions={repeats}", "--benchmark_min_time=0.05"],
                            check=True, capture_output=True, text=True)
    scale = {"ns": 1e-6, "us": 1e-3, "ms": 1.0, "s": 1e3}
    best = {}
    for row in json.loads(result.stdout)["benchmarks"]:
        if row.get("run_type") == "aggregate":
            continue
        took = row["cpu_time"] * scale[row["time_unit"]]
        best[row["run_name"]] = min(best.get(row["run_name"], 1e9), took)
    return best


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--core", type=int, default=min(os.sched_getaffinity(0)))
    parser.add_argument("--repeats", type=int, default=5)
    arguments = parser.parse_args()
    if not BENCH.exists():
        print(f"no {BENCH.relative_to(ROOT)}: build it first (see the head of this file)", file=sys.stderr)
        return 1
    os.sched_setaffinity(0, {arguments.core})
    warnings.simplefilter("ignore")
    np.seterr(all="ignore")
    repeats = arguments.repeats

    avx512, dispatch = numpy_units()
    print(f"python {platform.python_version()}, numpy {np.__version__}, pvlib {pvlib.__version__}, one core ({arguments.core})")
    print(f"numpy uses AVX-512: {'yes' if avx512 else 'no'} (dispatches {', '.join(dispatch) or 'nothing above its baseline'})")

    print(f"np.cos in double precision: {cosine_ns():.1f} ns a value (2 ns and less: vectorised)")

    hours = START + 3600.0 * np.arange(8760)
    minutes = START + 60.0 * np.arange(525600)
    light = light_year()
    peer = {
        "year": least_ms(lambda: positions(hours), repeats),
        "minutes": least_ms(lambda: positions(minutes), min(repeats, 3)),
        "haydavies": least_ms(lambda: orientation(light, 35.0, 180.0, "haydavies"), 4 * repeats),
        "perez": least_ms(lambda: orientation(light, 35.0, 180.0, "perez"), 4 * repeats),
    }
    for model in ("haydavies", "perez"):
        calls = least_ms(lambda: grid(light, model), 2)
        blocks = least_ms(lambda: grid_in_blocks(light, model), 2)
        peer[model + " grid"] = min(calls, blocks)
        print(f"pvlib grid, {model}: {calls:.0f} ms plane by plane, {blocks:.0f} ms tilt by tilt; the lesser counts")
    best = ours(repeats)

    rows = [
        ("positions, 8,760 hours", "year", "sun_positions_year", "8"),
        ("  with sunrise within its hour", "year", "sun_of_weather_year", "8"),
        ("positions, 525,600 minutes", "minutes", "sun_positions_minutes", "20 (40)"),
        ("one plane, Hay-Davies, year's sum", "haydavies", "orientation_year_hay_davies", ""),
        ("  hourly total kept, float", "haydavies", "orientation_total_series/hay_davies", ""),
        ("  hourly parts kept, double", "haydavies", "orientation_series_hay_davies", ""),
        ("one plane, Perez, year's sum", "perez", "orientation_year_perez", "40 (100)"),
        ("  hourly total kept, float", "perez", "orientation_total_series/perez", "40 (100)"),
        ("  hourly parts kept, double", "perez", "orientation_series_perez", "40 (100)"),
        ("grid 19 x 73, Hay-Davies, sums", "haydavies grid", "orientation_grid_19x73/hay_davies/0", "150 (400)"),
        ("  from light", "haydavies grid", "orientation_grid_19x73/hay_davies/1", ""),
        ("  hourly series kept, float", "haydavies grid", "orientation_grid_series_19x73/hay_davies", "40"),
        ("grid 19 x 73, Perez, sums", "perez grid", "orientation_grid_19x73/perez/0", "150 (400)"),
        ("  from light", "perez grid", "orientation_grid_19x73/perez/1", ""),
        ("  hourly series kept, float", "perez grid", "orientation_grid_series_19x73/perez", "40"),
    ]
    print(f"\n{'':36}{'pvlib ms':>12}{'here ms':>12}{'ratio':>9}   wanted (goal)")
    for label, theirs, name, wanted in rows:
        print(f"{label:36}{peer[theirs]:12.3f}{best[name]:12.4f}{peer[theirs] / best[name]:9.0f}   {wanted}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
