#!/usr/bin/env bash
# Counts the instructions of one year of operation with valgrind's callgrind: a figure that does not hang on how busy the
# machine is. Compares with instructions.txt and ends with 1 when it drifts by more than 2 %.
#   bash tests/bench/instructions.sh            count and compare
#   bash tests/bench/instructions.sh --record   count and write instructions.txt
source "$(dirname "${BASH_SOURCE[0]}")/../../app/setup.sh"
cd "$project"
record="$project/tests/bench/instructions.txt"
allowed_percent=2

ensure_packages "${packages_program[@]}" "${packages_tests[@]}" valgrind
build_preset release -DWG_TESTS=ON -DWG_BENCH=ON -- wg_year_count
program="$(find .build/release -name wg_year_count -type f -perm -u+x | head -n 1)"

# instructions TIMES: executed while the year runs TIMES times, setting up included.
instructions() {
    LC_ALL=C valgrind --tool=callgrind --callgrind-out-file=/dev/null "$program" "$1" 2>&1 >/dev/null |
        sed -n 's/^==[0-9]*== Collected : \([0-9]*\).*/\1/p'
}

one="$(instructions 1)"
three="$(instructions 3)"
# The difference of two counts: reading the tables, making the weather and starting drop out.
count="$(((three - one) / 2))"
compiler="$(sed -n 's/^CMAKE_CXX_COMPILER:[^=]*=//p' .build/release/CMakeCache.txt)"
flags="$(sed -n 's/^CMAKE_CXX_FLAGS_RELEASE:[^=]*=//p' .build/release/CMakeCache.txt) -ffp-contract=off"
text="$(printf 'instructions of one year of operation: %s\nof starting and reading: %s\ncompiler: %s\nflags: %s\nmachine: %s\n' \
    "$count" "$((one - count))" "$("$compiler" --version | head -n 1)" "$flags" "$(uname -m)")"
printf '%s\n' "$text"

if [ "${1:-}" = --record ]; then
    printf '%s\n' "$text" >"$record"
    exit 0
fi
recorded="$(sed -n 's/^instructions of one year of operation: //p' "$record")"
awk -v now="$count" -v then="$recorded" -v allowed="$allowed_percent" 'BEGIN {
    drift = 100 * (now / then - 1)
    printf "recorded %d, drift %+.2f %%\n", then, drift
    exit (drift > allowed || drift < -allowed) ? 1 : 0
}' || {
    say "More than $allowed_percent % away from what is recorded. Meant? Then: bash tests/bench/instructions.sh --record"
    exit 1
}
