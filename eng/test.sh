#!/usr/bin/env bash
# Restores, builds with warnings as errors, publishes the program on Linux and runs every test; ends with "N passed, N failed, N skipped".
set -uo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
configuration=${CONFIGURATION:-Release}

install_debian() {
  local missing=()
  command -v chromium >/dev/null || missing+=(chromium)
  command -v ngspice >/dev/null || missing+=(ngspice)
  command -v pdftotext >/dev/null || missing+=(poppler-utils)
  [ ${#missing[@]} -eq 0 ] && return
  if command -v apt-get >/dev/null && [ "$(id -u)" = 0 ]; then
    apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" fonts-dejavu-core >/dev/null
  else
    echo "not installed, so the tests that need them are skipped: ${missing[*]}"
  fi
}

install_debian
dotnet restore --locked-mode -v q || exit 1
dotnet build --no-restore -c "$configuration" -v q || exit 1
# The pages are tested in the program as it is handed out: compiled ahead, it starts and reviews in half the time.
if [ "$(uname -sm)" = "Linux x86_64" ]; then
  bash eng/publish.sh linux-x64 || exit 1
  export ORLOP_TEST_PROGRAM="$PWD/artifacts/linux-x64/orlop"
fi
log=$(mktemp)
dotnet test --no-build -c "$configuration" --max-parallel-test-modules 1 2>&1 | tee "$log"
result=$?
awk '/^ *failed:/{f=$2} /^ *succeeded:/{p=$2} /^ *skipped:/{s=$2} END{printf "%d passed, %d failed, %d skipped\n", p, f, s}' "$log"
rm -f "$log"
exit $result
