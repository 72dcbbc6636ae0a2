#!/usr/bin/env bash
# Installs what is missing, builds the program and runs it.
#   bash app/run.sh           opens the demonstration job; without a display, plans it and writes its documents
#                             to ./warmgable-demo/
#   bash app/run.sh ARGS...   runs the program with these arguments (see --help)
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

ensure_packages "${packages_program[@]}"
[ -x "$project/.build/release/app/warmgable" ] || say "Building the program; the first time takes some minutes."
# The program alone needs no test libraries; once the tests were built here, the build folder keeps them.
without_tests=(-DWG_TESTS=OFF -DWG_BENCH=OFF)
grep -qs '^WG_TESTS:BOOL=ON' "$project/.build/release/CMakeCache.txt" && without_tests=()
build_preset release "${without_tests[@]}" -- warmgable

program="$project/.build/release/app/warmgable"
if [ "$#" -gt 0 ]; then
    exec "$program" "$@"
elif [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec "$program" --demo
else
    exec "$program" plan "$project/resources/demo/job.json" --out ./warmgable-demo
fi
