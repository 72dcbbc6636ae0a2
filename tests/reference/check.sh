#!/usr/bin/env bash
# Reruns the scripts that made the committed reference values, with their pinned packages, and compares.
# Without PyPI it says visibly that it skipped and ends with 0: the committed values are tested in any case.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
cache="$PWD/.cache"
mkdir -p "$cache"

# venv_for REQUIREMENTS: prints the interpreter of a venv with exactly these packages; made once a requirements text.
venv_for() {
    local requirements="$1" folder
    folder="$cache/venv-$(sha256sum "$requirements" | cut -c1-12)"
    if [ ! -e "$folder/ready" ]; then
        rm -rf "$folder"
        /usr/bin/python3 -m venv "$folder" &&
            "$folder/bin/pip" install --quiet --disable-pip-version-check --only-binary :all: -r "$requirements" >&2 &&
            touch "$folder/ready" || return 1
    fi
    printf '%s\n' "$folder/bin/python"
}

check() {
    local requirements="$1" script="$2" python
    shift 2
    if ! python="$(venv_for "$requirements" 2>"$cache/venv.log")"; then
        echo "SKIPPED: $script: its packages could not be installed from PyPI" >&2
        return 0
    fi
    "$python" "$script" --check "$@"
}

# libnova_sun.c against libnova_sun.json, digit by digit, where the library can be had (Debian: libnova-dev).
check_libnova() {
    local work
    work="$(mktemp -d)"
    if ! cc -O1 tests/reference/libnova_sun.c -lnova -lm -o "$work/libnova_sun" 2>"$cache/libnova.log"; then
        echo "SKIPPED: libnova_sun.c: no C compiler or no libnova (Debian: libnova-dev)" >&2
        rm -rf "$work"
        return 0
    fi
    "$work/libnova_sun" >"$work/out.json"
    # One unit of the last digit may differ with another mathematical library.
    if /usr/bin/python3 - tests/reference/libnova_sun.json "$work/out.json" <<'PYTHON'; then
import json, sys
a, b = (json.load(open(path)) for path in sys.argv[1:])
same = len(a["rows"]) == len(b["rows"]) and all(
    abs(x - y) <= 2.1e-6 for r, s in zip(a["rows"], b["rows"]) for x, y in zip(r, s))
print("libnova_sun.json:", "reproduced" if same else "differs", "with libnova", b["made_with"]["libnova"])
sys.exit(not same)
PYTHON
        rm -rf "$work"
    else
        rm -rf "$work"
        return 1
    fi
}

failed=0
check tests/reference/requirements-pvlib.txt tests/reference/pvlib_year.py || failed=1
check tests/reference/requirements-pvlib.txt tests/reference/pvlib_hours.py || failed=1
check tests/reference/requirements-pvlib.txt tests/reference/make_dirint_table.py || failed=1
check_libnova || failed=1
# One venv for all: it holds the same CoolProp as requirements-coolprop.txt.
check tests/reference/requirements-heat.txt tests/reference/make_refrigerants.py || failed=1
check tests/reference/requirements-heat.txt tests/reference/heat_values.py || failed=1
check tests/reference/requirements-heat.txt tests/reference/compressor_fit.py || failed=1
check tests/reference/requirements-heat.txt tests/reference/commissioning_values.py || failed=1
check tests/reference/requirements-fluids.txt tests/reference/fluids_values.py || failed=1
check tests/reference/requirements-icalendar.txt tests/reference/icalendar_values.py || failed=1
exit "$failed"
