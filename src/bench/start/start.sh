#!/usr/bin/env bash
# What a start costs beside a web application that does nothing, turn and turn about, until each is
# ready: from the jar, extracted, and extracted with an archive of its classes. Prints medians as
# key=value and keeps them in target/bench/start.txt, cpu in seconds of processor time, which other
# work on the machine disturbs least. Needs the jar (mvn -DskipTests package); all loops are bounded.
#
#   src/bench/start/start.sh [starts of each] [options of the machine, for both applications ...]
set -euo pipefail
cd "$(dirname "$0")/../../.."
rounds=${1:-5}
options=(-Xmx384m "${@:2}")
work=$(mktemp -d)
pid=
trap 'kill $pid 2>/dev/null || true; rm -rf "$work"' EXIT
mvn -q -o -f src/bench/empty/pom.xml -DskipTests package
declare -A jar=([ours]=$(ls target/standproud-*.jar) [empty]=target/empty/empty-0.jar)
declare -A ready=([ours]=/actuator/health/readiness [empty]=/v1/assessments)

# name of the measurement, application, folder of the records, how it is started ...
start() {
  local name=$1 port='' status='' begin clock
  begin=$(date +%s%N)
  java "${options[@]}" "${@:4}" --server.port=0 --standproud.audit.directory="$3" >"$work/log" 2>&1 &
  pid=$!
  for _ in $(seq 2400); do
    kill -0 "$pid"
    port=$(sed -n 's/.*Tomcat started on port \([0-9]*\).*/\1/p' "$work/log")
    # The empty application only takes a POST and answers a look at the address with 405.
    [[ -z $port ]] || status=$(curl -s -o /dev/null -w '%{http_code}' "http://127.0.0.1:$port${ready[$2]}" || true)
    [[ $status != 200 && $status != 405 ]] || break
    sleep 0.05
  done
  clock=$(date +%s%N)
  awk -v tick="$(getconf CLK_TCK)" '{ sub(/.*\) /, ""); print ($12 + $13) / tick }' \
    "/proc/$pid/stat" >>"$work/$name.cpu"
  awk -v ns="$((clock - begin))" 'BEGIN { print ns / 1e9 }' >>"$work/$name.wall"
  awk '/VmRSS/ { print $2 / 1024 }' "/proc/$pid/status" >>"$work/$name.rss"
  kill "$pid"
  wait "$pid" || true
}

median() { sort -g "$work/$1" | awk '{ at[NR] = $1 } END { print (at[int((NR + 1) / 2)] + at[int(NR / 2) + 1]) / 2 }'; }
over() { awk -v a="$(median "$1")" -v b="$(median "$2")" 'BEGIN { printf "%.2f\n", a / b }'; }

for app in ours empty; do
  java -Djarmode=tools -jar "${jar[$app]}" extract --destination "$work/$app" >/dev/null
  jar[$app-extracted]=$work/$app/$(basename "${jar[$app]}")
  # A run that ends when all is made, for the list of classes.
  java -XX:ArchiveClassesAtExit="$work/$app/classes.jsa" "${options[@]}" -Dspring.context.exit=onRefresh \
    -jar "${jar[$app-extracted]}" --standproud.audit.directory="$work/trained" >"$work/log" 2>&1
done
for round in $(seq "$rounds"); do
  start ours_first ours "$work/first-$round" -jar "${jar[ours-extracted]}"
  for app in ours empty; do
    start "${app}_jar" $app "$work/first-1" -jar "${jar[$app]}"
    start "${app}_extracted" $app "$work/first-1" -jar "${jar[$app-extracted]}"
    start "${app}_archive" $app "$work/first-1" -XX:SharedArchiveFile="$work/$app/classes.jsa" -jar "${jar[$app-extracted]}"
  done
done
mkdir -p target/bench
{
  echo "# src/bench/start/start.sh $rounds ${*:2}"
  for what in cpu wall; do
    suffix=$([[ $what == cpu ]] || echo _wall)
    echo "over_empty$suffix=$(over ours_extracted.$what empty_extracted.$what)"
    echo "jar_over_empty_jar$suffix=$(over ours_jar.$what empty_jar.$what)"
    echo "archive_over_empty_plain$suffix=$(over ours_archive.$what empty_extracted.$what)"
    echo "archive_over_empty_jar$suffix=$(over ours_archive.$what empty_jar.$what)"
    echo "archive_over_empty_archive$suffix=$(over ours_archive.$what empty_archive.$what)"
  done
  for name in ours_first ours_jar ours_extracted ours_archive empty_jar empty_extracted empty_archive; do
    echo "${name}_cpu_s=$(median $name.cpu)"
    echo "${name}_wall_s=$(median $name.wall)"
    echo "${name}_resident_mb=$(median $name.rss)"
  done
} | tee target/bench/start.txt
