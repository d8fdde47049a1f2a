#!/usr/bin/env bash
# How many set-ups a second over HTTP, each answer on disk, beside a web application that does
# nothing and beside whole assessments in one process: on H2, on H2 on a disk of memory, on
# PostgreSQL, on one core and in batches. All are started and warmed first; then each is loaded in
# turn, round after round, and a ratio is that of its median round, because what a machine gives
# changes within minutes. Needs the jar (mvn -DskipTests package), then the compiled benchmarks
# (mvn -Pbench test-compile dependency:build-classpath -Dmdep.outputFile=target/bench.cp) and hey, a
# general load generator (apt-get install hey). Prints a table and keeps its figures in
# target/bench/http.txt; all loops are bounded.
#
#   src/bench/load/http.sh [seconds of warming] [seconds of a round] [callers] [rounds]
#
# BENCH_JVM has the options of the machine for all of them.
set -euo pipefail
cd "$(dirname "$0")/../../.."
warm=${1:-30}
measure=${2:-6}
callers=${3:-16}
rounds=${4:-5}
jar=$(ls target/standproud-*.jar)
setup=seeds/setups/01-top-edge-wire-and-stop.json
# As the README has it for a small machine.
read -ra options <<<"${BENCH_JVM:--Xmx192m -Xmn96m -XX:+UseParallelGC}"
classes="target/test-classes:target/classes:$(cat target/bench.cp)"
export MALLOC_ARENA_MAX=2
work=$(mktemp -d)
disk=/dev/shm/standproud-bench-$$
pids=()
# The processes that read what this script writes end when it closes their input.
trap 'exec 8>&- 9>&-; kill "${pids[@]}" 2>/dev/null || true; wait; rm -rf "$work" "$disk"' EXIT

command -v hey >/dev/null || { echo "hey is wanted: apt-get install hey" >&2; exit 2; }
mvn -q -o -f src/bench/empty/pom.xml -DskipTests package

declare -A pid started
serve() { # port, command
  local port=$1 begin
  shift
  begin=$(date +%s%N)
  "$@" >"$work/$port.log" 2>&1 &
  pid[$port]=$!
  pids+=($!)
  for _ in $(seq 600); do
    curl -s -o /dev/null -X POST -H 'Content-Type: application/json' --data-binary "@$setup" \
      "http://127.0.0.1:$port/v1/assessments" && break
    sleep 0.05
  done
  started[$port]=$((($(date +%s%N) - begin) / 1000000))
}

standproud() { # port, folder of the records, more settings ...
  serve "$1" "${run[@]}" java "${options[@]}" -jar "$jar" --server.port="$1" \
    --standproud.audit.directory="$2" --standproud.limits.calls-per-minute=0 "${@:3}"
}
run=()

load() { # port, seconds, callers, calls a second of each (0: as many as go)
  hey -z "$2s" -c "$3" -q "$4" -m POST -T application/json -D "$setup" \
    "http://127.0.0.1:$1/v1/assessments"
}

percentile() { awk -v what="$1" '$1 == what && $2 == "in" { print $3 * 1000; exit }'; }

rate() { # port
  load "$1" "$measure" "$callers" 0 >"$work/$1.full"
  grep -q '\[201\]' "$work/$1.full" || { cat "$work/$1.full" >&2; exit 1; }
  awk '/Requests\/sec:/ { print $2 + 0; exit }' "$work/$1.full"
}

# Whole assessments with no server between, records on disk and as many callers.
in_process() { # seconds
  local reply
  echo "$1" >&8
  while read -r reply <&7; do # It logs too.
    [[ $reply == rate=* ]] && break
  done
  [[ $reply == rate=* ]] || { cat "$work/in-process.log" >&2; exit 1; }
  echo "${reply#rate=}"
}

# Sum and count of the time of the stages before storing, in seconds and assessments.
stages() { # port
  curl -s "http://127.0.0.1:$1/actuator/prometheus" |
    awk '/^standproud_stage_seconds_sum/ && !/storing/ { sum += $2 }
      /^standproud_stage_seconds_count/ && /mechanics/ { count = $2 } END { print sum, count }'
}

# One caller, so that no stage waits for a core: an assessment that is not stored, in milliseconds.
unstored() { # port
  local before
  before=$(stages "$1")
  load "$1" "$measure" 1 0 >/dev/null
  echo "$before $(stages "$1")" | awk '{ print ($3 - $1) / ($4 - $2) * 1000 }'
}

# Lines of one batch a second, of as many as single calls take a round for.
batch() { # port, single calls a second
  local lines begin judged
  lines=$(awk -v r="$2" -v s="$measure" 'BEGIN { print int(r * s) }')
  for _ in $(seq "$lines"); do cat "$work/line"; echo; done >"$work/batch.ndjson"
  begin=$(date +%s%N)
  curl -sS -H 'Content-Type: application/x-ndjson' -T "$work/batch.ndjson" -X POST \
    "http://127.0.0.1:$1/v1/assessments/batch" >"$work/answers"
  judged=$(grep -c '"status":201' "$work/answers")
  [[ $judged == "$lines" ]] || { head -c 500 "$work/answers" >&2; exit 1; }
  awk -v n="$lines" -v ns="$(($(date +%s%N) - begin))" 'BEGIN { printf "%.2f\n", n * 1e9 / ns }'
}

mkdir -p target/bench
out=target/bench/http.txt
echo "# src/bench/load/http.sh $warm $measure $callers $rounds" >"$out"
# The median, over the rounds, of an expression of their figures.
keep() { # name, expression
  awk -v cores="$(nproc)" "{ print ($2) }" "$work/rounds" | sort -g |
    awk -v name="$1" '{ v[NR] = $1 } END { printf "%s=%.3f\n", name, v[int((NR + 1) / 2)] }' >>"$out"
}
kept() { awk -F= -v name="$1" '$1 == name { print $2 }' "$out"; }

tr -d '\n' <"$setup" >"$work/line"
mkfifo "$work/end" "$work/ask" "$work/tell"
java -cp "$classes" org.standproud.audit.records.ServedPostgres <"$work/end" >"$work/address" \
  2>"$work/postgres.log" &
exec 9>"$work/end"
java "${options[@]}" -Djava.io.tmpdir="$work" -cp "$classes" org.standproud.api.InProcess "$callers" \
  <"$work/ask" >"$work/tell" 2>"$work/in-process.log" &
pids+=($!)
exec 8>"$work/ask" 7<"$work/tell"
in_process "$warm" >/dev/null
for _ in $(seq 600); do
  grep -q '^jdbc:' "$work/address" && break
  sleep 0.1
done

serve 8471 java "${options[@]}" -jar target/empty/empty-0.jar --server.port=8471
standproud 8472 "$work/data"
standproud 8473 "$disk" # Where being forced to disk costs nothing.
standproud 8474 "$work/unused" --spring.datasource.url="$(grep '^jdbc:' "$work/address")"
run=(taskset -c 0) # One core for the service, the other for who asks.
standproud 8475 "$work/one"
run=()
for port in 8471 8472 8473 8474; do
  load "$port" "$warm" "$callers" 0 >/dev/null
done
load 8475 "$warm" 1 0 >/dev/null

for _ in $(seq "$rounds"); do
  empty=$(rate 8471)
  whole=$(in_process "$measure")
  durable=$(rate 8472)
  memory_disk=$(rate 8473)
  postgres_rate=$(rate 8474)
  unstored=$(unstored 8472)
  single=$(rate 8472)
  both=$(batch 8472 "$single")
  one=$(batch 8475 "$single")
  echo "$empty $whole $durable $memory_disk $postgres_rate $unstored $single $both $one"
done | tee "$work/rounds"

# shellcheck disable=SC2016 # These are awk's columns: empty, whole, durable, ... as above.
{
  keep empty_rate '$1'
  keep in_process_rate '$2'
  keep durable_rate '$3'
  keep postgres_rate '$5'
  keep in_process_unstored_ms '$6'
  keep rate_over_predicted '$3 * (1 / $1 + 1 / $2)'
  keep rate_over_predicted_unstored '$3 * (1 / $1 + $6 / 1000 / cores)'
  keep durable_over_not '$3 / $4'
  keep batch_over_single '$8 / $7'
  keep batch_both_cores_over_one '$8 / $9'
}

echo
echo "| | first answer, ms | set-ups a second | p50 at full load, ms | p50 at 70 %, ms | p99 at 70 %, ms | memory, MB |"
echo "|---|---|---|---|---|---|---|"
row() { # name, port, figure
  local all each
  all=$(kept "$3")
  each=$(awk -v r="$all" -v c="$callers" 'BEGIN { printf "%.3f", 0.7 * r / c }')
  load "$2" $((2 * measure)) "$callers" "$each" >"$work/part"
  p50=$(percentile 50% <"$work/part")
  p99=$(percentile 99% <"$work/part")
  memory=$(awk '/VmHWM/ { print int($2 / 1024) }' "/proc/${pid[$2]}/status")
  printf '| %s | %s | %.0f | %.1f | %.1f | %.1f | %s |\n' "$1" "${started[$2]}" "$all" \
    "$(percentile 50% <"$work/$2.full")" "$p50" "$p99" "$memory"
}
row "web application that does nothing" 8471 empty_rate
row "Standproud, H2, durable" 8472 durable_rate
awk -v a="$p99" -v b="$p50" 'BEGIN { printf "p99_over_p50=%.3f\n", a / b }' >>"$out"
echo "memory_mb=$memory" >>"$out"
row "Standproud, PostgreSQL, durable" 8474 postgres_rate
awk -v a="$p99" -v b="$p50" 'BEGIN { printf "postgres_p99_over_p50=%.3f\n", a / b }' >>"$out"

cat "$out"
