# Shared by app/run.sh and tests/run.sh: finds the project, installs what is missing, configures and builds.
# Sourced, not run. Says little when there is nothing to do.

set -euo pipefail
project="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"

say() { printf '%s\n' "$*" >&2; }

# ccache may reuse objects built with the precompiled header of another build folder only when told to trust it.
export CCACHE_SLOPPINESS="${CCACHE_SLOPPINESS:-pch_defines,time_macros,include_file_mtime,include_file_ctime}"
# Objects are shared by all checkouts of the project on a machine: paths below it are hashed as relative ones.
export CCACHE_BASEDIR="${CCACHE_BASEDIR:-$project}" CCACHE_NOHASHDIR="${CCACHE_NOHASHDIR:-1}"
# A coding client may run without a locale; Qt wants UTF-8 and says so at length otherwise.
case "${LC_ALL:-${LC_CTYPE:-${LANG:-}}}" in
    *UTF-8* | *utf8*) ;;
    *) export LC_ALL=C.UTF-8 ;;
esac

packages_program=(
    g++ cmake ninja-build ccache
    qt6-base-dev libqt6sql6-sqlite libqt6sql6-psql qt6-charts-dev qt6-svg-dev libqt6opengl6-dev libgl1-mesa-dev
    qt6-tools-dev qt6-l10n-tools
    nlohmann-json3-dev libqrencode-dev libzip-dev libxlsxwriter-dev
    fonts-noto-core
)
packages_tests=(
    libgtest-dev libbenchmark-dev clang clang-tidy clang-format libclang-rt-14-dev
    python3 python3-venv xvfb xauth poppler-utils zbar-tools unzip git libnova-dev postgresql
)

# ensure_packages NAME...: installs the missing ones; without the right to, says which and how, and ends with 4.
ensure_packages() {
    local name missing=()
    for name in "$@"; do
        # Some machines bring their own compiler or Python; a command on the PATH is as good as the package.
        case "$name" in
            g++ | cmake | ccache | git | unzip) command -v "$name" >/dev/null 2>&1 && continue ;;
        esac
        [ "$(dpkg-query -W -f='${db:Status-Status}' "$name" 2>/dev/null || true)" = installed ] || missing+=("$name")
    done
    [ "${#missing[@]}" -eq 0 ] && return 0
    local as_root=()
    if [ "$(id -u)" -ne 0 ]; then
        if command -v sudo >/dev/null 2>&1 && sudo -n true 2>/dev/null; then
            as_root=(sudo -n)
        else
            say "These Debian packages are missing: ${missing[*]}"
            say "Ask whoever looks after this machine to run:"
            say "    sudo apt-get update && sudo apt-get install ${missing[*]}"
            exit 4
        fi
    fi
    say "Installing: ${missing[*]}"
    local log
    log="$(mktemp)"
    if ! { "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update -qq &&
           "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}"; } \
           >"$log" 2>&1; then
        tail -n 20 "$log" >&2
        say "Installing failed. Check the network and the package sources, then run this again."
        exit 4
    fi
    rm -f "$log"
}

# build_preset PRESET [cmake options --] TARGET...: configures when needed and builds, quiet unless something fails.
build_preset() {
    local preset="$1" options=() log
    shift
    while [ "$#" -gt 0 ] && [ "$1" != "--" ]; do
        options+=("$1")
        shift
    done
    [ "$#" -gt 0 ] && shift
    log="$(mktemp)"
    if ! (cd "$project" && cmake --preset "$preset" "${options[@]}") >"$log" 2>&1; then
        tail -n 40 "$log" >&2
        say "Configuring '$preset' failed."
        exit 4
    fi
    local targets=()
    [ "$#" -gt 0 ] && targets=(--target "$@")
    if ! (cd "$project" && cmake --build ".build/$preset" "${targets[@]}") >"$log" 2>&1; then
        grep -E 'error|Error|FAILED' -A 6 "$log" | head -n 80 >&2 || tail -n 60 "$log" >&2
        say "Building '$preset' failed."
        exit 4
    fi
    rm -f "$log"
}
