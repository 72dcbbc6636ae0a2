#!/usr/bin/env bash
# Runs the weather fuzz targets by hand: bash tests/fuzz/run.sh [SECONDS [READER...]]; readers: epw tmy3 pvgis plain any.
# Needs clang and its runtime (Debian: clang-14, libclang-rt-14-dev). Finds are left under .cache/fuzz.
set -eu
project="$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)"
seconds="${1:-60}"
[ "$#" -gt 0 ] && shift
[ "$#" -gt 0 ] || set -- epw tmy3 pvgis plain any
work="$project/.cache/fuzz"
mkdir -p "$work/objects"
cd "$project"
plain="-std=c++20 -O2 -g1 -ffp-contract=off -I."
# Watching every comparison would take half the time of whole files, whose keywords the corpus has anyway.
watched="-fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=undefined -fno-sanitize-coverage=trace-cmp"

# The rooms once for all readers. The sun is numbers only, and fast without sanitizers: whole files take long enough.
objects=()
for source in core/quantity/*.cpp core/sun/*.cpp core/weather/*.cpp; do
    object="$work/objects/$(echo "$source" | tr / _).o"
    objects+=("$object")
    flags="$plain"
    case "$source" in core/sun/*) ;; *) flags="$plain $watched" ;; esac
    [ "$object" -nt "$source" ] && [ -z "${REBUILD:-}" ] || clang++ $flags -c "$source" -o "$object"
done

status=0
for reader in "$@"; do
    name="read_$reader"
    [ "$reader" = pvgis ] && name=read_pvgis_tmy
    clang++ $plain $watched -fsanitize=fuzzer "-DWG_FUZZ_READER=$name" tests/fuzz/fuzz_weather.cpp "${objects[@]}" -o "$work/fuzz_$reader"
    mkdir -p "$work/found_$reader"
    inputs=("$work/found_$reader")
    for folder in "tests/fuzz/corpus/$reader" $([ "$reader" = any ] && ls -d tests/fuzz/corpus/*); do
        inputs+=("$folder")
    done
    nice -n 10 "$work/fuzz_$reader" -max_total_time="$seconds" -max_len=4096 -timeout=120 -rss_limit_mb=1500 \
        -print_final_stats=1 -artifact_prefix="$work/$reader-" "${inputs[@]}" >"$work/$reader.log" 2>&1 || status=1
    printf '%s: ' "$reader"
    grep -E 'stat::number_of_executed_units|SUMMARY|claim broken' "$work/$reader.log" | tr '\n' ' '
    grep -oE 'cov: [0-9]+' "$work/$reader.log" | tail -n 1
done
exit "$status"
