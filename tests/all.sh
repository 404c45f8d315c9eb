#!/usr/bin/env bash
# Everything that CI checks, from a bare Debian with the .NET SDK: installs the browser, builds, tests.
# The last line is the count: N passed, N failed[, N skipped].
cd "$(dirname "$0")/.." || exit 1
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 LANG=C.UTF-8

fail() { # reason: what is missing or broken, and the count that CI reads
  echo "$1" >&2
  echo "0 passed, 1 failed"
  exit 1
}

command -v dotnet >/dev/null || fail "The .NET SDK is missing: put dotnet 10 on the PATH."

as_root() { if [ "$(id -u)" = 0 ]; then "$@"; else sudo -n "$@"; fi; }
install() { { as_root apt-get update -qq && as_root apt-get install -y -qq --no-install-recommends "$@" fonts-dejavu-core; } >/dev/null; }
# The shell without windows needs a third of the processor time of the whole browser, which serves as well.
if [ -z "$BAKEHOUSE_CHROMIUM" ] && ! command -v chromium-headless-shell >/dev/null; then
  echo "Installing chromium-headless-shell for the browser tests"
  install chromium-headless-shell || command -v chromium >/dev/null || install chromium \
    || fail "Chromium is missing and could not be installed. As root: apt-get install chromium-headless-shell"
fi

dotnet build Bakehouse.sln -v quiet || fail "The build failed."

results=tests/results
rm -rf "$results" && mkdir -p "$results"
dotnet test --solution Bakehouse.sln --no-build --report-trx --results-directory "$PWD/$results" --max-parallel-test-modules 2
code=$?

# A host that crashed leaves no result file: each such project counts as one failure.
projects=$(ls -d tests/*.Tests | wc -l)
files=$(ls "$results"/*.trx 2>/dev/null | wc -l)
sum() { cat "$results"/*.trx 2>/dev/null | grep -o "<Counters[^>]*" | grep -oE " $1=\"[0-9]+\"" | grep -oE '[0-9]+' | awk '{s+=$1} END {print s+0}'; }
total=$(sum total) passed=$(sum passed) failed=$(sum failed)
skipped=$((total - passed - failed))
failed=$((failed + projects - files))
if [ "$code" != 0 ] && [ "$failed" = 0 ]; then failed=1; fi
echo "$passed passed, $failed failed, $skipped skipped"
[ "$failed" = 0 ]
