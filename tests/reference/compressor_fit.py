#!/usr/bin/env python3
"""Ten coefficients of an invented compressor: the block rill-17c of resources/equipment/invented.json.

    python3 -m venv .venv && .venv/bin/pip install -r tests/reference/requirements-heat.txt
    .venv/bin/python tests/reference/compressor_fit.py            prints the block's "compressor"
    .venv/bin/python tests/reference/compressor_fit.py --check    compares with what is committed
The compressor has volumetric and overall efficiencies that no product stands behind; its capacity and power are put on
a grid over the range with CoolProp's enthalpies and fitted by least squares, as a test laboratory's points would be.
"""

import json
import math
import pathlib
import sys

import CoolProp.CoolProp as cp
import numpy

CATALOGUE = pathlib.Path(__file__).resolve().parents[2] / "resources" / "equipment" / "invented.json"
BLOCK, FLUID, KELVIN = "rill-17c", "R134a", 273.15
SWEPT_M3_S = 17e-6 * 2900.0 / 60.0
SUPERHEAT_K, SUBCOOLING_K = 10.0, 0.0
RANGE = [[-22.0, 12.0], [-22.0, 52.0], [-10.0, 70.0], [20.0, 70.0], [20.0, 33.0], [-1.0, 12.0]]


def state(te, tc):
    low, high = (cp.PropsSI("P", "T", t + KELVIN, "Q", 1, FLUID) for t in (te, tc))
    suction = ("T", te + KELVIN + SUPERHEAT_K, "P", low, FLUID)
    density, enthalpy, entropy = (cp.PropsSI(k, *suction) for k in ("D", "H", "S"))
    ideal = cp.PropsSI("H", "P", high, "S", entropy, FLUID) - enthalpy
    liquid = cp.PropsSI("H", "T", tc + KELVIN - SUBCOOLING_K, "Q", 0, FLUID)
    ratio = high / low
    filling = 0.955 - 0.032 * (ratio - 1.0)
    overall = 0.63 * (1.0 - 0.20 * math.log(ratio / 3.0) ** 2)
    flow = SWEPT_M3_S * filling * density
    return flow * (enthalpy - liquid), flow * ideal / overall


def inside(te, tc):
    """Corners go clockwise."""
    pairs = zip(RANGE, RANGE[1:] + RANGE[:1])
    return all((x1 - x0) * (tc - y0) - (y1 - y0) * (te - x0) <= 1e-9 for (x0, y0), (x1, y1) in pairs)


def terms(s, d):
    return [1.0, s, d, s * s, s * d, d * d, s ** 3, s * s * d, s * d * d, d ** 3]


def main():
    points = [(te, tc) for te in numpy.arange(-22.0, 20.1, 2.0) for tc in numpy.arange(12.0, 70.1, 2.0)
              if inside(te, tc)]
    values = numpy.array([state(te, tc) for te, tc in points])
    matrix = numpy.array([terms(te, tc) for te, tc in points])
    columns = []
    for column in values.T:  # weighted: equal in per cent
        fitted = numpy.linalg.lstsq(matrix / column[:, None], numpy.ones(len(points)), rcond=None)[0]
        columns.append([float(f"{c:.7g}") for c in fitted])
        print(f"worst miss {100 * max(abs(matrix @ columns[-1] / column - 1.0)):.2f} %", file=sys.stderr)
    compressor = dict(capacity_w=columns[0], power_w=columns[1], suction_superheat_k=SUPERHEAT_K,
                      subcooling_k=SUBCOOLING_K, evaporating_min_c=-22, evaporating_max_c=20, condensing_min_c=12,
                      condensing_max_c=70, range=RANGE)
    if "--check" not in sys.argv[1:]:
        print(json.dumps(compressor, indent=2))
        return 0
    blocks = json.loads(CATALOGUE.read_text())["blocks"]
    committed = next(b for b in blocks if b["id"] == BLOCK)["compressor"]
    good = committed.keys() == compressor.keys() and all(
        numpy.allclose(committed[k], compressor[k], rtol=1e-4, atol=1e-7) for k in compressor)
    print("compressor of", BLOCK + ":", "reproduced" if good else "differs")
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
