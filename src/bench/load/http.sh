#!/usr/bin/env bash
# How many set-ups a second over HTTP, each answer on disk, beside a web application that does
# nothing, in one run on this machine alone. Needs the jar (mvn -DskipTests package) and hey, a
# general load generator (apt-get install hey). Prints a table; all loops are bounded.
#
#   src/bench/load/http.sh [seconds of warming] [seconds of measuring] [callers]
set -euo pipefail
cd "$(dirname "$0")/../../.."
warm=${1:-30}
measure=${2:-20}
callers=${3:-16}
jar=$(ls target/standproud-*.jar)
setup=seeds/setups/01-top-edge-wire-and-stop.json
work=$(mktemp -d)
pid=
trap 'kill $pid 2>/dev/null || true; rm -rf "$work"' EXIT

command -v hey >/dev/null || { echo "hey is wanted: apt-get install hey" >&2; exit 2; }
mvn -q -o -f src/bench/empty/pom.xml -DskipTests package

serve() { # name, command
  local port=$1
  shift
  local begin
  begin=$(date +%s%N)
  "$@" >"$work/log" 2>&1 &
  pid=$!
  for _ in $(seq 600); do
    curl -s -o /dev/null -X POST -H 'Content-Type: application/json' --data-binary "@$setup" \
      "http://127.0.0.1:$port/v1/assessments" && break
    sleep 0.05
  done
  started=$((($(date +%s%N) - begin) / 1000000))
}

load() { # port, seconds, callers, calls a second of each (0: as many as go)
  hey -z "$2s" -c "$3" -q "$4" -m POST -T application/json -D "$setup" \
    "http://127.0.0.1:$1/v1/assessments"
}

figure() { awk -v what="$1" '$0 ~ what { print $2 + 0; exit }'; }
percentile() { awk -v what="$1" '$1 == what && $2 == "in" { print $3 * 1000; exit }'; }

row() { # name, port
  load "$2" "$warm" "$callers" 0 >/dev/null
  load "$2" "$measure" "$callers" 0 >"$work/full"
  local rate each
  rate=$(figure Requests/sec: <"$work/full")
  each=$(awk -v r="$rate" -v c="$callers" 'BEGIN { printf "%.3f", 0.7 * r / c }')
  load "$2" "$measure" "$callers" "$each" >"$work/part"
  local memory
  memory=$(awk '/VmHWM/ { print int($2 / 1024) }' "/proc/$pid/status")
  grep -q '\[201\]' "$work/full" || { cat "$work/full" >&2; exit 1; }
  printf '| %s | %s | %.0f | %.1f | %.1f | %.1f | %s |\n' "$1" "$started" "$rate" \
    "$(percentile 50% <"$work/full")" "$(percentile 50% <"$work/part")" \
    "$(percentile 99% <"$work/part")" "$memory"
  kill "$pid"
  wait "$pid" 2>/dev/null || true
}

echo "| | first answer, ms | set-ups a second | p50 at full load, ms | p50 at 70 %, ms | p99 at 70 %, ms | memory, MB |"
echo "|---|---|---|---|---|---|---|"
serve 8471 java -Xmx384m -jar target/empty/empty-0.jar --server.port=8471
row "web application that does nothing" 8471
serve 8472 java -Xmx384m -jar "$jar" --server.port=8472 --standproud.audit.directory="$work/data" \
  --standproud.limits.calls-per-minute=0
row "Standproud, H2, durable" 8472
