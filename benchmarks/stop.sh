#!/usr/bin/env bash
# How soon a command ends after Ctrl-C, and with how many sheets: benchmarks/stop.sh JAR > report.
# Each command is stopped at several times after its start. Run it on an idle machine.
set -euo pipefail
cd "$(dirname "$0")/.."
jar=$(realpath "$1")
# A signal ignored from the start stays so, and every command would run to its end.
[ -z "$(trap -p INT)" ] || { echo "SIGINT is ignored here: run this in the foreground" >&2; exit 1; }
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

export XDG_CACHE_HOME="$scratch/cache"

sheets() { # the first number of sheets that an answer names
  grep -om1 '[0-9]* sheets\?' "$1" | head -1 || true
}

benchmarks/head.sh "Ctrl-C" "efforts as named, seed 1"
echo "\`benchmarks/stop.sh JAR\`. Built-in job, an empty cache. Seconds from the signal to the end"
echo "of the process, packet and pictures written included; 'ended' where it was done before."
echo
echo "| command | stopped after | ended within | answer |"
echo "|---|--:|--:|---|"
for what in "plan" "plan --effort quick" "compare --effort quick" "packet"; do
  for after in 0.5 1 2 4 8 16; do
    rm -rf "$scratch/out" "$scratch/cache"
    case $what in compare*) out=() ;; *) out=(--out "$scratch/out") ;; esac
    # Job control, so that the signal is not ignored in the background.
    set -m
    java -jar "$jar" $what "${out[@]}" --quiet >"$scratch/answer" 2>&1 &
    set +m
    pid=$!
    sleep "$after"
    start=$(date +%s%N)
    if kill -INT "$pid" 2>/dev/null; then
      wait "$pid" 2>/dev/null || true
      ended="$(awk -v a="$start" -v b="$(date +%s%N)" 'BEGIN { printf "%.1f s", (b - a) / 1e9 }')"
    else
      wait "$pid" 2>/dev/null || true
      ended="ended"
    fi
    echo "| $what | $after s | $ended | $(sheets "$scratch/answer") |"
  done
done
