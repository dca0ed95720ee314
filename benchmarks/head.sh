#!/usr/bin/env bash
# Prints the first lines of a report that a script writes: benchmarks/head.sh TITLE WHAT-WAS-ASKED
# As those of all reports they come from one class, compiled here with the two that it needs.
set -euo pipefail
cd "$(dirname "$0")/.."
classes=$(mktemp -d)
trap 'rm -rf "$classes"' EXIT
javac --release 17 -d "$classes" benchmarks/java/curvestock/bench/{Report,Engine,Calibrator}.java
java -cp "$classes" curvestock.bench.Report "$1" "$2"
