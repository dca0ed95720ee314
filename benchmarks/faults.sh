#!/usr/bin/env bash
# What becomes of a result folder when things go wrong: kill -9 at random moments, a full disk, a read-only
# one, too little memory, Ctrl-C, two runs into one folder, a clock that jumps, a pipe that closes, packings
# and whole runs kept between runs that were damaged.
#
#   benchmarks/faults.sh [KILLS] [SEED]        after `mvn -q verify`, as root for the mounts; Linux
#
# CURVESTOCK overrides the command, for example CURVESTOCK="java -cp ... curvestock.cli.Main".
# Exits with 1 if anything was half-written, lost, or answered with a stack trace.
set -uo pipefail
cd "$(dirname "$0")/.."
kills=${1:-100}
RANDOM=${2:-1}
run=${CURVESTOCK:-java -jar target/curvestock.jar}
read -r -a curvestock <<<"$run"
work=$(mktemp -d)
faults=0
export XDG_CACHE_HOME="$work/cache"
trap 'umount "$work/small" 2>/dev/null; rm -rf "$work"' EXIT

fault() { echo "  FAULT: $*"; faults=$((faults + 1)); }

# One line for all that lies in a folder; "absent" if there is none.
print_of() {
  if [ ! -e "$1" ]; then echo absent; return; fi
  (cd "$1" && find . -type f | LC_ALL=C sort | xargs sha256sum | sha256sum | cut -c1-16)
}

no_trace() { if grep -q -E "^\s+at |Exception in thread" "$1"; then fault "$2: a stack trace"; head -5 "$1"; fi; }

cat >"$work/job.yaml" <<'JOB'
curvestock: 1
title: Small job (invented)
invented: true
units: in
sheets: [{name: ply, size: 40 x 30, thickness: 1/2, price: 20}]
cutting: {kerf: 1/8, margin: 1/4}
pieces:
  - {name: quarter, count: 4, arc: {radius: 12, width: 3, angle: 90}}
  - {name: plate, count: 2, strip: {length: 9, width: 2}}
search: {effort: quick}
JOB

again() { "${curvestock[@]}" plan "$work/job.yaml" --quiet "$@" >"$work/said" 2>&1; }

# Kept runs are forgotten, or nothing would be worked out.
forget() { rm -f "$work"/cache/curvestock/*.run; }

plan() { forget; again "$@"; }

echo "two whole results"
plan --out "$work/old" || { cat "$work/said"; exit 1; }
plan --out "$work/new" --seed 2 || exit 1
# Timed once the packings are kept, as the runs below find them.
start=$(date +%s%N)
plan --out "$work/new" --seed 2 --force || exit 1
took=$(($(date +%s%N) - start))
mkdir "$work/runs"
cp "$work"/cache/curvestock/*.run "$work/runs"
old=$(print_of "$work/old")
new=$(print_of "$work/new")
[ "$old" != "$new" ] || fault "two seeds gave one result; the script cannot tell them apart"

# Half of the kills fall anywhere; half wait for the hidden folder and fall while it is written and moved.
# In four rounds of eight the result is worked out, in four it is taken from a kept run.
echo "kill -9, $kills times; a run takes $((took / 1000000)) ms"
declare -A seen=()
for ((i = 0; i < kills; i++)); do
  rm -rf "$work/out" "$work"/.curvestock-*
  before=absent
  if ((i / 2 % 2)); then cp -r "$work/old" "$work/out"; before=$old; fi
  forget
  if ((i / 4 % 2)); then cp "$work"/runs/* "$work/cache/curvestock"; fi
  "${curvestock[@]}" plan "$work/job.yaml" --quiet --seed 2 --out "$work/out" --force >/dev/null 2>&1 &
  victim=$!
  if ((i % 2)); then
    while kill -0 $victim 2>/dev/null && ! compgen -G "$work/.curvestock-*" >/dev/null; do sleep 0.001; done
    at=$(((RANDOM * 32768 + RANDOM) % 120000000))
  else
    at=$(((RANDOM * 32768 + RANDOM) * 1000 % (took * 5 / 4)))
  fi
  sleep "$(printf '%d.%09d' $((at / 1000000000)) $((at % 1000000000)))"
  kill -9 $victim 2>/dev/null
  wait $victim 2>/dev/null
  after=$(print_of "$work/out")
  case $after in
    "$new") state=complete ;;
    absent) state=absent ;;
    "$before") state=old ;;
    *) state=HALF; fault "round $i: the folder is neither old nor new"; ls -R "$work/out" ;;
  esac
  compgen -G "$work/.curvestock-*" >/dev/null && state="$state, killed while writing"
  [ "$after" = absent ] && [ "$before" != absent ] && state="between the two renames"
  seen[$state]=$((${seen[$state]:-0} + 1))
  # Killed between the two renames: the next run must find the former result and put it back.
  if [ "$after" = absent ] && [ "$before" != absent ]; then
    plan --out "$work/out" && fault "round $i: the former result was forgotten"
    grep -q 'put back' "$work/said" || fault "round $i: nobody told that the former result was put back"
    [ "$(print_of "$work/out")" = "$old" ] || fault "round $i: the former result is lost"
  fi
done
for state in "${!seen[@]}"; do echo "  $state: ${seen[$state]}"; done
rm -rf "$work"/.curvestock-*
rm -rf "$work/out"
plan --out "$work/out" && [ "$(print_of "$work/out")" = "$old" ] || fault "the next run after the kills failed"

echo "disk full and read-only"
mkdir "$work/small"
if mount -t tmpfs -o size=60k none "$work/small" 2>/dev/null; then
  plan --out "$work/small/out"; code=$?
  cat "$work/said"
  [ $code = 2 ] || fault "disk full: exit $code"
  no_trace "$work/said" "disk full"
  [ -z "$(ls -A "$work/small")" ] || fault "disk full: something was left: $(ls -A "$work/small")"
  mount -o remount,ro "$work/small"
  plan --out "$work/small/out"; code=$?
  cat "$work/said"
  [ $code = 2 ] || fault "read-only: exit $code"
  no_trace "$work/said" "read-only"
  umount "$work/small"
else
  echo "  skipped: may not mount"
fi

echo "too little memory"
for heap in 8m 12m 16m 24m 32m 48m; do
  rm -rf "$work/out"; cp -r "$work/old" "$work/out"
  JDK_JAVA_OPTIONS="-Xmx$heap" plan --out "$work/out" --seed 2 --force; code=$?
  state=$(print_of "$work/out")
  echo "  $heap: exit $code, $([ "$state" = "$new" ] && echo complete || echo "$([ "$state" = "$old" ] && echo old || echo OTHER)")"
  [ "$state" = "$new" ] || [ "$state" = "$old" ] || fault "$heap: the folder is neither old nor new"
  # A machine that cannot even start says so itself, with 1.
  [ $code = 0 ] || [ $code = 3 ] || grep -q 'Error occurred during init' "$work/said" || fault "$heap: exit $code: $(tail -3 "$work/said")"
  no_trace "$work/said" "$heap"
done

echo "Ctrl-C"
forget
sed -i 's/effort: quick/effort: thorough/' "$work/job.yaml"
for share in 20 60 100 150; do
  at=$((took * share / 100000000))
  at=$((at / 1000)).$(printf '%03d' $((at % 1000)))
  rm -rf "$work/out"
  # A shell without job control starts its background jobs deaf to SIGINT; setsid's child is not.
  perl -e '$SIG{INT}="DEFAULT"; exec @ARGV' "${curvestock[@]}" plan "$work/job.yaml" --quiet --out "$work/out" >"$work/said" 2>&1 &
  victim=$!
  sleep $at
  kill -INT $victim 2>/dev/null
  wait $victim; code=$?
  if [ -e "$work/out" ]; then
    "${curvestock[@]}" check "$work"/out/sheets/*.svg --job "$work/job.yaml" >/dev/null 2>&1 || fault "Ctrl-C after $at s: the result is not right"
    echo "  after $at s: exit $code, a checked result"
  else
    echo "  after $at s: exit $code, nothing written"
  fi
  no_trace "$work/said" "Ctrl-C"
done
sed -i 's/effort: thorough/effort: quick/' "$work/job.yaml"

echo "two runs into one folder"
for ((i = 0; i < ${PAIRS:-10}; i++)); do
  rm -rf "$work/out"
  if ((i % 2)); then cp -r "$work/old" "$work/out"; fi
  forget
  "${curvestock[@]}" plan "$work/job.yaml" --quiet --out "$work/out" --force >"$work/said1" 2>&1 & one=$!
  "${curvestock[@]}" plan "$work/job.yaml" --quiet --seed 2 --out "$work/out" --force >"$work/said2" 2>&1 & two=$!
  wait $one; a=$?
  wait $two; b=$?
  state=$(print_of "$work/out")
  [ "$state" = "$new" ] || [ "$state" = "$old" ] || fault "two runs, round $i: the folder is neither one's ($a, $b)"
  [ $a = 0 ] || [ $b = 0 ] || fault "two runs, round $i: both failed ($a, $b)"
  no_trace "$work/said1" "two runs"
  no_trace "$work/said2" "two runs"
done
echo "  done, leftovers: $(find "$work" -maxdepth 1 -name '.curvestock-*' | wc -l)"

echo "clock"
if command -v faketime >/dev/null; then
  for when in '1999-12-31 23:59:59' '2038-01-19 03:14:07' '2026-03-29 01:59:59 x100'; do
    rm -rf "$work/out"
    forget
    faketime -f "@$when" "${curvestock[@]}" plan "$work/job.yaml" --quiet --out "$work/out" >"$work/said" 2>&1 || fault "at $when: $(tail -1 "$work/said")"
    [ "$(print_of "$work/out")" = "$old" ] || fault "at $when: other bytes"
  done
  echo "  done"
else
  echo "  skipped: no faketime (Debian: apt-get install faketime)"
fi

echo "damaged packings and kept runs"
JDK_JAVA_OPTIONS=-Dcurvestock.cache=off plan --out "$work/plain" || fault "without kept packings: $(tail -1 "$work/said")"
[ "$(print_of "$work/plain")" = "$old" ] || fault "kept packings change the result"
kept="$work/cache/curvestock"
plan --out "$work/out" --force
for kind in packing run; do
  ls "$kept"/*.$kind >/dev/null 2>&1 || fault "no ${kind}s are kept, so there is nothing to damage"
done
for what in {packing,run}-{flip,cut,empty,noise,long,folder,forbidden}; do
  kind=${what%-*}
  damage=${what#*-}
  rm -rf "$work/out" "$kept"
  plan --out "$work/out" --force
  [ $kind = run ] || forget
  for file in "$kept"/*.$kind; do
    size=$(stat -c %s "$file")
    case $damage in
      flip) printf '\xff' | dd of="$file" bs=1 seek=$((RANDOM % size)) conv=notrunc status=none ;;
      cut) truncate -s $((RANDOM % size)) "$file" ;;
      empty) : >"$file" ;;
      noise) head -c 1000 /dev/urandom >"$file" ;;
      long) truncate -s 80M "$file" ;;
      folder) rm "$file"; mkdir -p "$file/inside" ;;
      forbidden) rm -rf "$kept"; : >"$kept"; break ;;
    esac
  done
  again --out "$work/out" --force || fault "$what: $(tail -1 "$work/said")"
  [ "$(print_of "$work/out")" = "$old" ] || fault "$what: other bytes"
  no_trace "$work/said" "$what"
  echo "  $what: exit 0, the same bytes"
done

echo "a pipe that closes"
"${curvestock[@]}" plan "$work/job.yaml" 2>"$work/said" | head -c 1 >/dev/null
no_trace "$work/said" "closed pipe"

echo "$faults faults"
[ $faults = 0 ]
