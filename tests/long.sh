#!/usr/bin/env bash
# Full sizes, by hand: what the quick tier runs small. Each finished part leaves a stamp for this commit below
# .cache/long/ and is not run again; delete the stamps to start over.
source "$(dirname "${BASH_SOURCE[0]}")/../app/setup.sh"
cd "$project"
stamps=".cache/long/$(git rev-parse --short HEAD 2>/dev/null || echo none)"
mkdir -p "$stamps"

part() {
    local name="$1"
    shift
    if [ -e "$stamps/$name" ]; then
        say "$name: done before"
        return 0
    fi
    say "$name"
    "$@" && touch "$stamps/$name"
}

all_rooms=(-UWG_TEST_ROOMS -DWG_UNITY=ON)
build_preset release -DWG_TESTS=ON -DWG_BENCH=ON "${all_rooms[@]}"
# Random sweeps multiply their sizes by this.
export WG_SWEEP=20
part sweeps ctest --test-dir .build/release -j "$(nproc)" --output-on-failure
build_preset asan "${all_rooms[@]}"
part sweeps-sanitized ctest --test-dir .build/asan -j "$(nproc)" --output-on-failure
unset WG_SWEEP
# 10,000 random edits undone and redone; 200 programs killed while their job is edited.
export WG_LONG=1 QT_QPA_PLATFORM=offscreen
part edits .build/release/tests/ui/test_ui_common --gtest_filter='ManyEdits*'
part killed .build/release/tests/ui/test_ui_window --gtest_filter='Killed*'
unset WG_LONG QT_QPA_PLATFORM
analyze() {
    cmake --preset tidy >/dev/null
    git ls-files 'core/*.cpp' | grep -v '^core/store/' | xargs -P "$(nproc)" -n 4 clang-tidy -p .build/tidy --quiet \
        --checks='-*,clang-analyzer-core.*,clang-analyzer-cplusplus.*,clang-analyzer-deadcode.*' \
        --extra-arg=-Wno-unknown-warning-option
}
part analyzer analyze
part instructions bash tests/bench/instructions.sh
part benchmarks .build/release/tests/bench/warmgable_bench --benchmark_repetitions=5 \
    --benchmark_report_aggregates_only=true --benchmark_out=".cache/long/bench.json" --benchmark_out_format=json
say "All parts done for $stamps"
