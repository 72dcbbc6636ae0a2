#!/usr/bin/env bash
# Has openpyxl (pinned) read what the program wrote: xlsx_check.sh PROGRAM. Without PyPI it says that it skipped.
set -euo pipefail
program="$(realpath "$1")"
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
mkdir -p .cache
requirements=tests/reference/requirements-openpyxl.txt
venv="$PWD/.cache/venv-$(sha256sum "$requirements" | cut -c1-12)"
if [ ! -e "$venv/ready" ]; then
    rm -rf "$venv"
    if ! { /usr/bin/python3 -m venv "$venv" &&
           "$venv/bin/pip" install --quiet --disable-pip-version-check --only-binary :all: -r "$requirements" &&
           touch "$venv/ready"; } >/dev/null 2>&1; then
        echo "SKIPPED: openpyxl could not be installed from PyPI"
        exit 0
    fi
fi
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
"$program" "$work/list.xlsx"
"$venv/bin/python" tests/reference/xlsx_check.py "$work/list.xlsx"
