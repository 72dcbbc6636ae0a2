#!/bin/sh
# Fetches public weather years into .cache/weather for the tests that read real files: the data folder of the pvlib 0.9.5
# wheel (BSD-3-Clause) carries a TMY3, an EPW and a PVGIS year. Nothing of it is committed; without it those tests say so
# and are skipped. Needs python3 with pip, or sets up a throw-away environment with it.
set -eu

project=$(CDPATH= cd -- "$(dirname -- "$0")/../.." && pwd)
target="$project/.cache/weather"
wheel=pvlib-0.9.5-py3-none-any.whl
mkdir -p "$target"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

if [ ! -f "$target/$wheel" ]; then
    python3 -m venv "$work/venv"
    "$work/venv/bin/pip" download --quiet --no-deps --dest "$target" "pvlib==0.9.5"
fi

python3 - "$target/$wheel" "$target" <<'PYTHON'
import pathlib
import sys
import zipfile

names = {
    "723170TYA.CSV": "tmy3_greensboro.csv",
    "703165TY.csv": "tmy3_sand_point.csv",
    "Burlington, United States SolarAnywhere Time Series 2021 Lat_44_465 Lon_-73_205 TMY3 format.csv":
        "tmy3_burlington_timeseries.csv",
    "NLD_Amsterdam062400_IWEC.epw": "epw_amsterdam.epw",
    "tmy_45.000_8.000_2005_2016.csv": "pvgis_45n_8e.csv",
    "tmy_45.000_8.000_2005_2016.epw": "pvgis_45n_8e.epw",
}
target = pathlib.Path(sys.argv[2])
with zipfile.ZipFile(sys.argv[1]) as wheel:
    for inside, outside in names.items():
        (target / outside).write_bytes(wheel.read("pvlib/data/" + inside))
        print(target / outside)
PYTHON
