#!/usr/bin/env bash
# Makes target/image/curvestock: a folder that runs without Java on the machine (same system and processor as
# here), with class data prepared for a fast start; and target/image/curvestock.tar.gz of it.
#
#   mvn -q verify && src/release/image.sh
#
# Needs the JDK 17 that built the jar (jdeps, jlink). Try it: target/image/curvestock/bin/curvestock plan
set -euo pipefail
cd "$(dirname "$0")/../.."
jar=target/curvestock.jar
[ -f "$jar" ] || { echo "no $jar: build it first by mvn -q verify" >&2; exit 2; }
image=target/image/curvestock
rm -rf target/image
mkdir -p "$image/bin" "$image/lib"

# What the jar's classes name; libraries name more than is ever run, which does no harm.
# java.desktop draws pictures; jdk.charsets, jdk.localedata and jdk.crypto are not needed: no network.
# jdk.management takes directives to the compiler.
modules=$(jdeps --multi-release 17 --ignore-missing-deps --print-module-deps "$jar"),jdk.management
jlink --add-modules "$modules" --strip-debug --no-man-pages --no-header-files --compress 2 \
  --output "$image/runtime"
cp "$jar" "$image/lib/"
cp LICENSE "$image/"

cat >"$image/bin/curvestock" <<'LAUNCHER'
#!/bin/sh
# Runs Curvestock with the Java that lies beside it.
self=$0
while [ -h "$self" ]; do
  link=$(readlink "$self")
  case $link in /*) self=$link ;; *) self=$(dirname "$self")/$link ;; esac
done
home=$(cd "$(dirname "$self")/.." && pwd)
exec "$home/runtime/bin/java" -Xshare:auto -XX:SharedArchiveFile="$home/lib/curvestock.jsa" \
  $CURVESTOCK_OPTIONS -jar "$home/lib/curvestock.jar" "$@"
LAUNCHER
chmod +x "$image/bin/curvestock"

# Class data: first of the runtime itself, then of what a plan loads on top of it.
"$image/runtime/bin/java" -Xshare:dump >/dev/null
trial=$(mktemp -d)
trap 'rm -rf "$trial"' EXIT
"$image/runtime/bin/java" -XX:ArchiveClassesAtExit="$image/lib/curvestock.jsa" -Djava.awt.headless=true \
  -jar "$image/lib/curvestock.jar" plan --effort quick --quiet --out "$trial/plan" >/dev/null 2>"$trial/said" ||
  { cat "$trial/said" >&2; exit 1; }

"$image/bin/curvestock" --version
tar -C target/image --sort=name --owner=0 --group=0 --numeric-owner --mtime=2026-01-01 -cf - curvestock |
  gzip -n >target/image/curvestock.tar.gz
du -sh "$image" target/image/curvestock.tar.gz
