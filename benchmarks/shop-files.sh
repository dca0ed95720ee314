#!/usr/bin/env bash
# Eight demo jobs (invented) in six machine settings: planned, drawn, read back by `check`, and looked at by
# foreign readers where they are installed (librsvg's rsvg-convert; Python's ezdxf, by PYTHON=...). Prints a table.
# JOBS='default window-loops' takes only these; KEEP=FOLDER keeps what fails there.
# Use: benchmarks/shop-files.sh JAR > benchmarks/report-shop-files.md
set -u
jar=$1
here=$(cd "$(dirname "$0")/.." && pwd)
python=${PYTHON:-python3}
work=$(mktemp -d)
# Nobody's cache: what an earlier run of this script kept would be checked a second time.
export XDG_CACHE_HOME=$work/cache
jobs=${JOBS:-"default first-helix-quarter porch-helix-store-cut closet-spiral window-loops harbor-curves
  helix/boathouse-spiral helix/orchard-climb"}
settings=(
  "{}"
  "{outlines: offset}"
  "{lines-within: 0.05 mm, bit: 0.2 mm}"
  "{outlines: offset, tabs: {width: 6 mm, count: 3}}"
  "{letters: text, dxf: {unit: in, edges: separate}}"
  "{outlines: offset, lines-within: 0.1 mm, letters: none, dxf: {unit: in}}"
)

# Layers of all DXF files by an independent reader, and how many faults it finds.
foreign_dxf() {
  "$python" - "$@" 2>/dev/null <<'P' || echo "not here"
import sys, ezdxf
faults = 0
layers = set()
for path in sys.argv[1:]:
    doc = ezdxf.readfile(path)
    audit = doc.audit()
    faults += len(audit.errors) + len(audit.fixes)
    faults += doc.header.get("$INSUNITS") != (1 if path.endswith("-in.dxf") else 4)
    layers |= {e.dxf.layer for e in doc.modelspace()}
print(f"{faults} faults; " + " ".join(sorted(layers)))
P
}

foreign_svg() {
  command -v rsvg-convert >/dev/null || { echo "not here"; return; }
  local bad=0
  for file in "$@"; do rsvg-convert -w 200 "$file" -o "$work/picture.png" 2>/dev/null || bad=$((bad + 1)); done
  echo "$# drawn, $bad refused"
}

"$here/benchmarks/head.sh" "Machine files in foreign readers" "effort quick, seed 1"
echo "Exit code 0 of \`check\` means that every drawing read back is the layout, every lap is cleared and no other wood,"
echo "and every piece hangs by its tabs. Foreign readers: librsvg's rsvg-convert, and ezdxf for Python."
echo
echo "| job | machine | plan | check | cut files right | undersides right | groups of the SVG | rsvg-convert | ezdxf |"
echo "|---|---|---|---|--:|--:|---|---|---|"
for job in $jobs; do
  for setting in "${settings[@]}"; do
    file=$work/job.yaml
    # The demo's own machine and effort give way to those of the table.
    awk '/^machine:|^search:/ {skip=1; next} /^[a-z]/ {skip=0} !skip' "$here/demo-data/$job.yaml" > "$file"
    printf 'search: {effort: quick}\nmachine: %s\n' "$setting" >> "$file"
    rm -rf "$work/out"
    java -jar "$jar" plan "$file" --out "$work/out" > "$work/plan.txt" 2>&1
    plan=$?
    java -jar "$jar" check "$work/out" > "$work/check.txt" 2>&1
    check=$?
    right=$(grep -E '(-cut|test-cut)[^ ]*( \(test cut\))?: right$' "$work/check.txt" | wc -l)
    all=$(ls "$work"/out/sheets/*-cut* "$work"/out/test-cut* 2>/dev/null | wc -l)
    under=$(grep -c '(underside): right$' "$work/check.txt")
    allunder=$(ls "$work"/out/sheets/*-flip* "$work"/out/test-flip* 2>/dev/null | wc -l)
    groups=$(cat "$work"/out/sheets/*-cut*.svg "$work"/out/sheets/*-flip*.svg 2>/dev/null |
      grep -oE '<g id="[a-z-]+"' | cut -d'"' -f2 | sort -u | tr '\n' ' ')
    svg=$(foreign_svg "$work"/out/sheets/*.svg "$work"/out/test-*.svg)
    dxf=$(foreign_dxf "$work"/out/sheets/*.dxf "$work"/out/test-*.dxf)
    if [ -n "${KEEP:-}" ] && [ "$plan$check" != 00 ]; then
      kept=$KEEP/$(echo "$job $setting" | tr -c 'a-z0-9\n' '-')
      mkdir -p "$kept" && cp -r "$work"/out "$file" "$work"/plan.txt "$work"/check.txt "$kept"
    fi
    echo "| $job | \`$setting\` | $plan | $check | $right of $all | $under of $allunder | $groups | $svg | $dxf |"
  done
done
rm -rf "$work"
