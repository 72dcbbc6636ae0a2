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

failed=0
check tests/reference/requirements-pvlib.txt tests/reference/pvlib_year.py || failed=1
check tests/reference/requirements-coolprop.txt tests/reference/make_refrigerants.py || failed=1
exit "$failed"
