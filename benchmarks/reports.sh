#!/usr/bin/env bash
# Makes all reports of benchmarks/ on the present engine, one after another; on an idle machine, overnight.
#
#   benchmarks/reports.sh [NAME...]      all, or only those named; --list tells the names and what they take
#
# A finished report of this engine is not made again (FORCE=1 makes it all the same), and one that was broken
# off goes on where it stopped if it keeps a journal in target/bench (literature, batch, quick, quick-thorough). So a broken run
# is just started again. The engine is the last commit that changed what packs (class Engine lists the folders), for
# whole commands the last that changed src/main; every report names it.
# OLD=JAR puts an older program beside the present one in the report on speed.
set -euo pipefail
cd "$(dirname "$0")/.."

# Name, report, processor minutes where the calibrator takes 2.4 s, what it tells; see README.md.
reports='
cases-quick report-cases-quick.md 11 57 cases against three rivals, quick
cases report-cases.md 47 the same at normal effort
literature report-literature.md 3 published instances
bounds report-bounds.md 2 proven limits beside the counts
growth report-growth.md 1 growth with pieces on a sheet
batch report-batch.md 25 1,000 to 10,000 pieces in one run
atlas-report report-atlas.md 18 the atlas for sizes not in it
quick report-quick.md 78 quick effort against normal
quick-thorough report-quick-thorough.md 150 quick effort against thorough, random kinds
cores report-cores.md 2 what more cores are worth
jmh report-jmh.md 3 hot paths
start report-start.md 3 time to start
speed report-speed.md 5 processor time of whole commands
stop report-stop.md 5 how soon a command ends
shop-files report-shop-files.md 15 machine files in foreign readers'

if [ "${1:-}" = --list ]; then
  echo "$reports" | sed 1d
  exit
fi
names=("$@")
if [ $# = 0 ]; then mapfile -t names < <(echo "$reports" | sed 1d | cut -d' ' -f1); fi

# Standard output becomes a report only when its maker has ended well.
into() { # report, then the command
  local report=benchmarks/$1
  shift
  "$@" >target/bench/report.md && mv target/bench/report.md "$report"
}

built=""
build() { # once: classes, class path, jar
  [ -z "$built" ] || return 0
  echo "building"
  mvn -q -Pbenchmarks package -DskipTests
  mvn -q -Pbenchmarks dependency:build-classpath -Dmdep.includeScope=test -Dmdep.outputFile=target/bench/classpath
  built=yes
}

bench() { # JVM arguments, class and its arguments
  java -XX:ActiveProcessorCount=1 -Djava.util.concurrent.ForkJoinPool.common.parallelism=0 \
    -Djava.awt.headless=true -cp "target/test-classes:target/classes:$(cat target/bench/classpath)" "$@"
}

jmh() {
  bench org.openjdk.jmh.Main -f 1 -wi 2 -w 2 -i 3 -r 2 -rf csv -rff target/bench/jmh.csv >&2 || return 1
  benchmarks/head.sh "Hot paths" "JMH, 1 fork, 3 runs of 2 s after 2 to warm up, no seed but the pairs' own, 1"
  echo "| benchmark | mode | score | error | unit |"
  echo "|---|---|--:|--:|---|"
  python3 -c 'import csv, sys
for row in csv.DictReader(open(sys.argv[1])):
    name = row["Benchmark"].split("packing.")[-1]
    print("| %s | %s | %.4g | %.2g | %s |" % (name, row["Mode"], float(row["Score"]), float(row["Score Error (99.9%)"]), row["Unit"]))' \
    target/bench/jmh.csv
}

make_report() {
  case $1 in
    cases-quick) bench -Dbench.effort=quick curvestock.bench.CompareCases ;;
    cases) bench -Dbench.effort=normal curvestock.bench.CompareCases ;;
    literature) bench -Dbench.effort=normal curvestock.bench.LiteratureReport ;;
    bounds) bench curvestock.bench.BoundsReport ;;
    growth) bench curvestock.bench.GrowthReport ;;
    batch) bench curvestock.bench.BatchReport 1 2 5 10 ;;
    atlas-report) bench curvestock.bench.AtlasReport 40 1 2,3,4 0,1,2 6 ;;
    quick) bench curvestock.bench.QuickReport normal 40 19 '.*' 1000000 ;;
    quick-thorough) bench curvestock.bench.QuickReport thorough 40 19 '1/.*' 1000000 ;;
    cores)
      java -Djava.awt.headless=true -cp "target/test-classes:target/classes:$(cat target/bench/classpath)" \
        curvestock.bench.CoresReport
      ;;
    jmh) into report-jmh.md jmh ;;
    start)
      command -v hyperfine >/dev/null || { echo "needs hyperfine (Debian: apt-get install hyperfine)"; return 1; }
      src/release/image.sh && benchmarks/start.sh
      ;;
    speed) into report-speed.md benchmarks/speed.sh target/curvestock.jar ${OLD:+"$OLD"} ;;
    stop) into report-stop.md benchmarks/stop.sh target/curvestock.jar ;;
    shop-files) into report-shop-files.md benchmarks/shop-files.sh target/curvestock.jar ;;
  esac
}

engine() { # name of a report: the commit that it has to name
  local folders=(src/main/java/curvestock/{geometry,piece,sheet,layout,packing,bound} src/main/resources/curvestock/packing)
  case $1 in batch | cores | jmh | start | speed | stop | shop-files) folders=(src/main) ;; esac
  echo "$(git log -1 --format=%h -- "${folders[@]}")$([ -z "$(git status --porcelain -- "${folders[@]}")" ] || echo -dirty)"
}

is_made() { # report, engine: of that engine, and finished
  [ -f "benchmarks/$1" ] && head -n 6 "benchmarks/$1" | grep -q "^Engine $2 " &&
    ! grep -q '^\*\*Not finished' "benchmarks/$1"
}

mkdir -p target/bench
failed=()
for name in "${names[@]}"; do
  row=$(echo "$reports" | grep "^$name " || true)
  [ -n "$row" ] || { echo "no report is called $name; --list tells the names" >&2; exit 2; }
  report=$(echo "$row" | cut -d' ' -f2)
  engine=$(engine "$name")
  if [ -z "${FORCE:-}" ] && is_made "$report" "$engine"; then
    echo "$name: $report is of engine $engine"
    continue
  fi
  build
  echo "$name: making $report, about $(echo "$row" | cut -d' ' -f3) processor minutes"
  # One that fails does not keep the others from being made.
  TIMEFORMAT='%U %S'
  { time make_report "$name" >"target/bench/$name.log" 2>&1 || failed+=("$name"); } 2>target/bench/time
  took=$(tail -1 target/bench/time | awk '{ printf "%.1f processor minutes", ($1 + $2) / 60 }')
  case " ${failed[*]} " in
    *" $name "*) echo "  FAILED after $took, see target/bench/$name.log" ;;
    *) echo "  done in $took" ;;
  esac
done
[ ${#failed[@]} = 0 ] || { echo "failed: ${failed[*]}"; exit 1; }
