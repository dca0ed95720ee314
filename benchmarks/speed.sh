#!/usr/bin/env bash
# How much processor time whole commands take, over a calibrator: benchmarks/speed.sh NEW.jar [OLD.jar] > report.
# Run it on an idle machine. Each figure is user and system seconds of the whole process, start-up
# included, divided by the calibrator (a Java loop adding 1.0/i 400 million times), one run a command; the
# calibrator is measured before and after, and the mean taken.
set -euo pipefail
cd "$(dirname "$0")/.."
new=$(realpath "$1")
old=${2:+$(realpath "$2")}
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
javac --release 17 -d "$scratch" benchmarks/java/curvestock/bench/Calibrator.java

calibrate() { java -cp "$scratch" curvestock.bench.Calibrator; }

# Processor seconds of a command; what it prints is thrown away.
seconds() {
  local TIMEFORMAT='%U %S'
  { time "$@" >/dev/null 2>&1 || true; } 2>&1 | awk '{ printf "%.2f", $1 + $2 }'
}

run() { # jar, then the command's words
  local jar=$1
  shift
  rm -rf "$scratch/out" "$scratch/empty"
  seconds java -jar "$jar" "$@" --quiet
}

row() { # what, goal, then the command's words
  local what=$1 goal=$2
  shift 2
  local a b=""
  a=$(run "$new" "$@")
  [ -z "$old" ] || b=$(run "$old" "$@")
  rows+=("$what|$goal|$a|$b")
}

# Nobody's cache, and for each command an empty one: `run` deletes it.
export XDG_CACHE_HOME="$scratch/empty"
rows=()
before=$(calibrate)
out=(--out "$scratch/out")
row "\`plan\`, normal" 20 plan "${out[@]}" --no-cache
row "\`plan\`, quick" "" plan "${out[@]}" --no-cache --effort quick
row "\`compare\`, quick" 25 compare --no-cache --effort quick
row "\`helix\` with sheets" 6 helix
row "\`helix\` without" 2 helix --no-sheets
row "\`packet\`" 45 packet "${out[@]}"
for job in demo-data/helix/orchard-climb demo-data/helix/brewery-oval demo-data/helix/boathouse-spiral \
  demo-data/foundry-oval demo-data/spare-room; do
  row "\`plan\` quick, $(basename $job)" 12 plan $job.yaml "${out[@]}" --no-cache --effort quick
done
export XDG_CACHE_HOME="$scratch/cache"
run "$new" plan demo-data/helix/boathouse-spiral.yaml "${out[@]}" --effort quick >/dev/null
[ -z "$old" ] || run "$old" plan demo-data/helix/boathouse-spiral.yaml "${out[@]}" --effort quick >/dev/null
row "the same again, boathouse" 4 plan demo-data/helix/boathouse-spiral.yaml "${out[@]}" --effort quick
row "the same with \`--details\`: its layouts from the cache, all else made anew" "" \
  plan demo-data/helix/boathouse-spiral.yaml "${out[@]}" --effort quick --details
after=$(calibrate)

benchmarks/head.sh "Processor time of whole commands" "efforts as named, seed 1"
echo "\`benchmarks/speed.sh NEW.jar OLD.jar\`; old: the jar given. Built-in job unless named. Calibrator $before s before,"
echo "$after s after; figures are times the calibrator, in one run."
echo
echo "| what | old | now | goal |"
echo "|---|--:|--:|--:|"
printf '%s\n' "${rows[@]}" | awk -F'|' -v a="$before" -v b="$after" '{
  mean = (a + b) / 2
  printf "| %s | %s | %.1f | %s |\n", $1, $4 == "" ? "" : sprintf("%.1f", $4 / mean), $3 / mean, $2 == "" ? "" : "≤ " $2
}'
