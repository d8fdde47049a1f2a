#!/usr/bin/env bash
# Things that go wrong on purpose, each repeatable: prints what was found as key=value and keeps it
# in api-docs/reliability, from which the tables of api-docs/reliability.md are made. Needs the jar
# (mvn -DskipTests package) and the compiled tests (mvn test-compile); speaks to 127.0.0.1 only, all
# loops are bounded, and every process it starts is ended. Ends with 1 if something did not stand.
#
#   src/bench/faults/run.sh [-Dproperty=value ...] [trial ...]
#
#   src/bench/faults/run.sh -Dtest.faults.seed=7 replicas
#   src/bench/faults/run.sh -Dtest.soak.minutes=30 soak
set -euo pipefail
cd "$(dirname "$0")/../../.."
options=()
while [[ "${1:-}" == -D* ]]; do
  options+=("$1")
  shift
done
mvn -q -o dependency:build-classpath -Dmdep.outputFile=target/faults.cp -Dmdep.includeScope=test
exec java -Xmx512m -Dtest.jar="${TEST_JAR:-$(ls target/standproud-*.jar)}" "${options[@]}" \
  -cp "target/test-classes:target/classes:$(cat target/faults.cp)" \
  org.standproud.faults.Trials "$@"
