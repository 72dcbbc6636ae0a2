#!/usr/bin/env bash
# Fuzzes the hostile readers: bash tests/fuzz/run.sh [SECONDS [NAME...]], each NAME for so long, as many at once as there
# are cores. Names: those of tests/fuzz/CMakeLists.txt; without any all of them. What is found is left below .cache/fuzz
# with the log; a find of a past run is tried again first. Exit 1: something was found.
source "$(dirname "${BASH_SOURCE[0]}")/../../app/setup.sh"
cd "$project"
seconds="${1:-60}"
[ "$#" -gt 0 ] && shift
[ "$#" -gt 0 ] || set -- job exchange versions climates gauge_log prices issued_paper rules weather_any weather_epw weather_tmy3 weather_pvgis weather_plain
ensure_packages "${packages_program[@]}" clang libclang-rt-14-dev
work="$project/.cache/fuzz"
mkdir -p "$work"
build_preset fuzz -- $(printf 'fuzz_%s ' "$@")

fuzz_one() {
    local name="$1" folder inputs
    mkdir -p "$work/met_$name"
    inputs=("$work/met_$name")
    for folder in "tests/fuzz/corpus/${name#weather_}" $([ "$name" = weather_any ] && echo tests/fuzz/corpus/{epw,tmy3,pvgis,plain}); do
        [ -d "$folder" ] && inputs+=("$folder")
    done
    # Jobs are longer than the patches on weather files.
    local longest=32768
    case "$name" in weather_*) longest=4096 ;; esac
    if nice -n 10 ".build/fuzz/tests/fuzz/fuzz_$name" -max_total_time="$seconds" -max_len="$longest" -timeout=60 \
        -rss_limit_mb=1500 -print_final_stats=1 -artifact_prefix="$work/$name-" "${inputs[@]}" >"$work/$name.log" 2>&1; then
        printf 'fuzz %s: %s runs, %s\n' "$name" "$(grep -oE 'executed_units: [0-9]+' "$work/$name.log" | grep -oE '[0-9]+')" \
            "$(grep -oE 'cov: [0-9]+' "$work/$name.log" | tail -n 1)"
    else
        printf 'fuzz %s: FOUND SOMETHING\n' "$name"
        grep -E 'SUMMARY|claim broken|Test unit written|ERROR' "$work/$name.log" || tail -n 20 "$work/$name.log"
        return 1
    fi
}
export -f fuzz_one
export work seconds
printf '%s\n' "$@" | xargs -P "$(nproc)" -I{} bash -c 'fuzz_one {}'
