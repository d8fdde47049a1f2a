#!/usr/bin/env bash
# How many set-ups a second over HTTP, each answer on disk, beside a web application that does
# nothing, in one run on this machine alone: on H2, on H2 on a disk of memory, on PostgreSQL. Needs
# the jar (mvn -DskipTests package), the compiled benchmarks (mvn -Pbench test-compile) and hey, a
# general load generator (apt-get install hey). Prints a table and keeps its figures in
# target/bench/http.txt; all loops are bounded.
#
#   src/bench/load/http.sh [seconds of warming] [seconds of measuring] [callers]
#
# STANDPROUD_JVM has the options of the machine for both applications.
set -euo pipefail
cd "$(dirname "$0")/../../.."
warm=${1:-30}
measure=${2:-20}
callers=${3:-16}
jar=$(ls target/standproud-*.jar)
setup=seeds/setups/01-top-edge-wire-and-stop.json
# As the README has it for a small machine.
read -ra options <<<"${STANDPROUD_JVM:--Xmx192m -Xmn96m -XX:+UseParallelGC}"
export MALLOC_ARENA_MAX=2
work=$(mktemp -d)
disk=/dev/shm/standproud-bench-$$
pid=
postgres=
trap 'kill $pid $postgres 2>/dev/null || true; rm -rf "$work" "$disk"' EXIT

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

# Sum and count of the time of the stages before storing, in seconds and assessments.
stages() { # port
  curl -s "http://127.0.0.1:$1/actuator/prometheus" |
    awk '/^standproud_stage_seconds_sum/ && !/storing/ { sum += $2 }
      /^standproud_stage_seconds_count/ && /mechanics/ { count = $2 } END { print sum, count }'
}

stop() {
  kill "$pid"
  wait "$pid" 2>/dev/null || true
}

row() { # name, port
  load "$2" "$warm" "$callers" 0 >/dev/null
  load "$2" "$measure" "$callers" 0 >"$work/full"
  local each
  rate=$(figure Requests/sec: <"$work/full")
  each=$(awk -v r="$rate" -v c="$callers" 'BEGIN { printf "%.3f", 0.7 * r / c }')
  load "$2" "$measure" "$callers" "$each" >"$work/part"
  p50=$(percentile 50% <"$work/part")
  p99=$(percentile 99% <"$work/part")
  memory=$(awk '/VmHWM/ { print int($2 / 1024) }' "/proc/$pid/status")
  grep -q '\[201\]' "$work/full" || { cat "$work/full" >&2; exit 1; }
  printf '| %s | %s | %.0f | %.1f | %.1f | %.1f | %s |\n' "$1" "$started" "$rate" \
    "$(percentile 50% <"$work/full")" "$p50" "$p99" "$memory"
}

# Lines of one batch a second, of as many as single calls take the measured time for.
batch() { # port, single calls a second
  local lines begin
  lines=$(awk -v r="$2" -v s="$measure" 'BEGIN { print int(r * s) }')
  tr -d '\n' <"$setup" >"$work/line"
  for _ in $(seq "$lines"); do cat "$work/line"; echo; done >"$work/batch.ndjson"
  begin=$(date +%s%N)
  curl -sS -H 'Content-Type: application/x-ndjson' -T "$work/batch.ndjson" -X POST \
    "http://127.0.0.1:$1/v1/assessments/batch" >"$work/answers"
  local judged
  judged=$(grep -c '"status":201' "$work/answers")
  [[ $judged == "$lines" ]] || { head -c 500 "$work/answers" >&2; exit 1; }
  awk -v n="$lines" -v ns="$(($(date +%s%N) - begin))" 'BEGIN { printf "%.2f\n", n * 1e9 / ns }'
}

standproud() { # port, folder of the records, more settings ...
  serve "$1" "${run[@]}" java "${options[@]}" -jar "$jar" --server.port="$1" \
    --standproud.audit.directory="$2" --standproud.limits.calls-per-minute=0 "${@:3}"
}
run=()

mkdir -p target/bench
out=target/bench/http.txt
echo "# src/bench/load/http.sh $warm $measure $callers" >"$out"
keep() { awk -v k="$1" -v a="$2" -v b="$3" 'BEGIN { printf "%s=%.3f\n", k, a / b }' >>"$out"; }

echo "| | first answer, ms | set-ups a second | p50 at full load, ms | p50 at 70 %, ms | p99 at 70 %, ms | memory, MB |"
echo "|---|---|---|---|---|---|---|"
serve 8471 java "${options[@]}" -jar target/empty/empty-0.jar --server.port=8471
row "web application that does nothing" 8471
stop
keep empty_rate "$rate" 1
empty=$rate

# Whole assessments with no server between, records on disk and as many callers: with an empty call
# it predicts what HTTP should give.
whole=$(java "${options[@]}" -Djava.io.tmpdir="$work" \
  -cp "target/test-classes:target/classes:$(cat target/bench.cp)" \
  org.standproud.api.InProcess "$warm" "$measure" "$callers" 2>"$work/whole.log" | tail -1)
keep in_process_rate "$whole" 1

standproud 8472 "$work/data"
row "Standproud, H2, durable" 8472
keep durable_rate "$rate" 1
keep p99_over_p50 "$p99" "$p50"
keep memory_mb "$memory" 1
durable=$rate
# One caller, so that no stage waits for a core: the time of an assessment that is not stored, were
# both cores to do nothing else.
before=$(stages 8472)
load 8472 "$((measure / 2))" 1 0 >/dev/null
seconds=$(echo "$before $(stages 8472)" | awk '{ print ($3 - $1) / ($4 - $2) }')
keep in_process_ms "$(awk -v s="$seconds" 'BEGIN { print s * 1000 }')" 1
predicted=$(awk -v e="$empty" -v s="$seconds" -v n="$(nproc)" 'BEGIN { print 1 / (1 / e + s / n) }')
keep rate_over_predicted_unstored "$durable" "$predicted"
keep rate_over_predicted "$durable" "$(awk -v e="$empty" -v w="$whole" 'BEGIN { print 1 / (1 / e + 1 / w) }')"
both=$(batch 8472 "$durable")
keep batch_over_single "$both" "$durable"
stop

# One core for the service, the other for who asks.
run=(taskset -c 0)
standproud 8475 "$work/one"
load 8475 "$warm" 1 0 >/dev/null
keep batch_both_cores_over_one "$both" "$(batch 8475 "$durable")"
stop
run=()

# The same on a disk of memory, where being forced to disk costs nothing.
standproud 8473 "$disk"
row "Standproud, H2, on a disk of memory" 8473
stop
keep durable_over_not "$durable" "$rate"

mkfifo "$work/end"
java -cp "target/test-classes:target/classes:$(cat target/bench.cp)" \
  org.standproud.audit.store.ServedPostgres <"$work/end" >"$work/address" 2>"$work/postgres.log" &
postgres=$!
exec 9>"$work/end"
for _ in $(seq 600); do
  grep -q '^jdbc:' "$work/address" && break
  sleep 0.1
done
standproud 8474 "$work/unused" --spring.datasource.url="$(grep '^jdbc:' "$work/address")"
row "Standproud, PostgreSQL, durable" 8474
stop
exec 9>&-
wait "$postgres" || true
keep postgres_rate "$rate" 1
keep postgres_p99_over_p50 "$p99" "$p50"
cat "$out"
