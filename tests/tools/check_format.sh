#!/usr/bin/env bash
# Every C++ source is as clang-format leaves it. Usage: check_format.sh PROJECT_DIR
set -euo pipefail
cd "$1"
find core ui app tests -name '*.cpp' -o -name '*.h' | sort | xargs clang-format --dry-run --Werror
