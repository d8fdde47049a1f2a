#!/usr/bin/env bash
# Runs the benchmarks and writes api-docs/performance.md from what they left in target/bench.
#
#   src/bench/run.sh short|long [benchmarks, a regular expression] [numbers of cards]
#
# Short: few iterations, all benchmarks of a kind in one machine (minutes). Long: as annotated, a
# machine for each benchmark (an hour and more; leave the machine alone). Figures of src/bench/load
# written to target/bench/http.txt as key=value are taken in, and those of src/bench/start.
set -euo pipefail
cd "$(dirname "$0")/../.."
form=${1:-short}
what=${2:-.}
cards=${3:-16,70,500,2000}
heap=2g
case $form in
  short) options="-wi 3 -w 1 -i 3 -r 1 -f 0" ;;
  long) options="" ;;
  *) echo "short or long" >&2; exit 2 ;;
esac
mkdir -p target/bench
mvn -q -Pbench test-compile dependency:build-classpath -Dmdep.outputFile=target/bench.cp
path=target/test-classes:target/classes:$(cat target/bench.cp)

# result file, benchmarks, options: only what was asked for, and what fails leaves no file.
run() {
  [[ $1 =~ $what ]] || return 0
  # shellcheck disable=SC2086
  java -Xmx$heap -cp "$path" org.openjdk.jmh.Main "$2" $options -jvmArgs -Xmx$heap \
    -rf json -rff "target/bench/$1.json" "${@:3}" || rm -f "target/bench/$1.json"
}

run "beside-$cards" 'SideBySideBenchmark.(traced|kinds|loop.*|easy.*|droolsKept.*)' -p "cards=$cards"
run container 'SideBySideBenchmark.droolsNew.*' -p cards=16,70 -bm ss -wi 1 -i 3
run elsewhere ElsewhereBenchmark
run rules 'RulesBenchmark.(tracing.*|wholeGate)'
run evidence EvidenceBenchmark
[[ ! ratios =~ $what ]] ||
  java -Xmx$heap -cp "$path" org.standproud.mechanics.EvidenceRatios target/bench/ratios.txt
run stage StageBenchmark
run advice AdviceBenchmark
java -cp "$path" org.standproud.PerformancePage target/bench api-docs/performance.md \
  "src/bench/run.sh $form '$what' $cards" "$heap"
