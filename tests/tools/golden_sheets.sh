#!/bin/sh
# Ten install sheets to be looked at before a release: every kind of fixing, both hands, one and two plates, flammable
# refrigerant, all languages, both paper sizes and every look. Prints the number of pages of each.
#
#   golden_sheets.sh OUTDIR [PROGRAM]        PROGRAM: default .build/release/app/warmgable
#
# Writes OUTDIR/NAME/install-sheet.pdf and, where pdftoppm and montage are installed, OUTDIR/NAME.png with all pages.
set -eu
[ $# -ge 1 ] || { echo "golden_sheets.sh OUTDIR [PROGRAM]" >&2; exit 2; }
root=$(cd "$(dirname "$0")/../.." && pwd)
out=$1
program=${2:-$root/.build/release/app/warmgable}
jobs=$root/tests/golden/jobs
demo=$root/resources/demo/job.json
mkdir -p "$out"
export QT_QPA_PLATFORM=offscreen

# Copy of a job with every plate on the other hand.
left_handed() {
    python3 - "$1" "$2" <<'EOF'
import json, sys
with open(sys.argv[1], encoding="utf-8") as source:
    job = json.load(source)
for choice in job["choices"]:
    for placement in choice["placements"]:
        placement["hand"] = "left"
with open(sys.argv[2], "w", encoding="utf-8") as target:
    json.dump(job, target)
EOF
}

failed=0
sheet() { # NAME JOB OPTIONS...
    name=$1
    job=$2
    shift 2
    rm -rf "${out:?}/$name"
    mkdir -p "$out/$name"
    # Exit 1: the plan has a stop; its sheet is written and says so.
    code=0
    "$program" plan "$job" --out "$out/$name" "$@" >"$out/$name/summary.txt" 2>&1 || code=$?
    if [ ! -s "$out/$name/install-sheet.pdf" ]; then
        echo "$name: no sheet (exit $code)"
        failed=1
        return
    fi
    pages=$(pdfinfo "$out/$name/install-sheet.pdf" | sed -n 's/^Pages: *//p')
    echo "$name: $pages pages$([ "$code" -eq 0 ] || echo ", exit $code")"
    if command -v montage >/dev/null && command -v pdftoppm >/dev/null; then
        pdftoppm -r 60 -png "$out/$name/install-sheet.pdf" "$out/$name/page"
        montage "$out/$name"/page-*.png -tile 5x -geometry +4+4 -background gray "$out/$name.png"
        rm -f "$out/$name"/page-*.png
    fi
}

left_handed "$demo" "$out/demo_left.json"
left_handed "$jobs/pantry_r290.json" "$out/pantry_left.json"
sheet 01_demo "$demo"
sheet 02_demo_gable_es "$demo" --choice "B: two small collectors on the gable" --language es
sheet 03_sleeve_r290_de "$jobs/pantry_r290.json" --language de
sheet 04_gable_es_letter "$jobs/coast_gable.json" --language es --paper letter
sheet 05_ballast_de_bw "$jobs/flat_roof_ballast.json" --language de --black-and-white
sheet 06_seam_letter_large "$jobs/snow_valley.json" --paper letter --large-print
sheet 07_terrace_es_large "$jobs/southern_terrace.json" --language es --large-print
sheet 08_left_de_letter "$out/demo_left.json" --language de --paper letter
sheet 09_left_bw_large "$out/demo_left.json" --black-and-white --large-print
sheet 10_sleeve_left_es_letter_bw "$out/pantry_left.json" --language es --paper letter --black-and-white
exit $failed
