#!/usr/bin/env bash
# Publishes self-contained programs into artifacts/<platform>. Usage: eng/publish.sh [linux-x64 win-x64 osx-arm64]
set -euo pipefail
cd "$(dirname "$0")/.."
platforms=("$@")
[ ${#platforms[@]} -eq 0 ] && platforms=(linux-x64 win-x64 osx-arm64)
for platform in "${platforms[@]}"; do
  rm -rf "artifacts/$platform"
  # What a platform restores besides is kept out of the lock files in the tree.
  dotnet publish src/Orlop.App -c Release -r "$platform" --self-contained -p:PublishReadyToRun=true -p:NuGetLockFilePath=obj/publish.lock.json -o "artifacts/$platform" -v q
  echo "artifacts/$platform: $(du -sh "artifacts/$platform" | cut -f1)"
done
