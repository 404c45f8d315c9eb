#!/usr/bin/env bash
# Takes the pictures of the README from the running app: each page at counter and phone size, and the ring.
# They land in tests/results/pictures; copy the ones to show into wwwroot-assets/pictures.
cd "$(dirname "$0")/.." || exit 1
export LANG=C.UTF-8 BAKEHOUSE_PICTURES="$PWD/tests/results/pictures"
mkdir -p "$BAKEHOUSE_PICTURES"
dotnet run --project tests/Bakehouse.Browser.Tests && ls "$BAKEHOUSE_PICTURES"
