#!/usr/bin/env bash
# Proves the published Linux program from another folder: version, a review with its exit code, a page and its assets.
set -euo pipefail
program=$(cd "$(dirname "$0")/../artifacts/linux-x64" && pwd)/orlop
examples=$(cd "$(dirname "$0")/../examples" && pwd)
folder=$(mktemp -d)
cd "$folder"
"$program" --version
code=0
"$program" review "$examples/one-circuit.json" >review.txt || code=$?
[ "$code" -le 1 ] || { echo "review ended with $code"; cat review.txt; exit 1; }
"$program" serve --port 5987 --no-open >serve.txt 2>&1 &
server=$!
trap 'kill $server 2>/dev/null || true; rm -rf "$folder"' EXIT
for _ in $(seq 100); do curl -fsS -o page.html http://127.0.0.1:5987/ 2>/dev/null && break; sleep 0.2; done
grep -q "<main" page.html
asset=$(grep -oE 'href="[^"]*\.css"' page.html | head -1 | cut -d'"' -f2)
[ "$(curl -fsS "http://127.0.0.1:5987/${asset#/}" | wc -c)" -gt 1000 ]
echo "published program works from another folder"
