#!/usr/bin/env bash
# How long Curvestock takes to start and to plan its default job, as ratios to a bare JVM that says hello.
#
#   mvn -q verify && src/release/image.sh && benchmarks/start.sh [RUNS]     on an idle machine
#
# Needs hyperfine (Debian). Writes benchmarks/report-start.md. Seconds are this machine's; ratios travel better.
set -euo pipefail
cd "$(dirname "$0")/.."
runs=${1:-10}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cat >"$work/Hello.java" <<'JAVA'
public final class Hello {
  public static void main(String[] args) {
    System.out.println("hello");
  }
}
JAVA
javac --release 17 -d "$work" "$work/Hello.java"
image=target/image/curvestock/bin/curvestock
named=(
  "bare JVM, hello|java -cp $work Hello"
  "jar, --version|java -jar target/curvestock.jar --version"
  "jar, default plan at quick effort|java -jar target/curvestock.jar plan --effort quick --quiet --no-cache"
  "jar, the same plan again|java -jar target/curvestock.jar plan --effort quick --quiet"
)
if [ -x "$image" ]; then
  named+=(
    "image with class data, --version|$image --version"
    "image with class data, default plan at quick effort|$image plan --effort quick --quiet --no-cache"
  )
fi
export XDG_CACHE_HOME="$work/cache"
args=()
for one in "${named[@]}"; do args+=(-n "${one%%|*}" "${one#*|}"); done
hyperfine --warmup 1 --runs "$runs" --export-json "$work/times.json" "${args[@]}"
benchmarks/head.sh "Time to start" "effort quick, seed 1" >benchmarks/report-start.md
python3 - "$work/times.json" "$runs" >>benchmarks/report-start.md <<'PY'
import json, sys
results = json.load(open(sys.argv[1]))["results"]
hello = results[0]["median"]
print(f"Median of {sys.argv[2]} runs by hyperfine. Ratios are to the first line.\n")
print("| what | median, s | least, s | largest, s | ratio |\n|---|--:|--:|--:|--:|")
for r in results:
    print(f"| {r['command']} | {r['median']:.3f} | {r['min']:.3f} | {r['max']:.3f} | {r['median'] / hello:.1f} |")
PY
cat benchmarks/report-start.md
