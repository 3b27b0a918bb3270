#!/bin/bash
# Makes the Debian package: the window, and the command line `mendline` beside it. Prints the path of the package.
#
# usage: src-tauri/deb.sh [--debug]     --debug packs the build that tests use: made faster, larger
set -euo pipefail
cd "$(dirname "$0")"
profile=release flags=(--release) tauri=()
if [ "${1:-}" = --debug ]; then profile=debug flags=() tauri=(--debug); fi
target=$(cargo metadata --no-deps --format-version 1 | sed 's/.*"target_directory":"\([^"]*\)".*/\1/')
[ -x node_modules/.bin/tauri ] || npm ci --no-audit --no-fund >&2

cargo build --locked "${flags[@]}" --package mendline-core >&2
config=$(printf '{"bundle":{"linux":{"deb":{"files":{"/usr/bin/mendline":"%s"}}}}}' "$target/$profile/mendline")
node_modules/.bin/tauri build "${tauri[@]}" --bundles deb --config "$config" -- --locked >&2
ls -t "$target/$profile/bundle/deb/"*.deb | head -1
