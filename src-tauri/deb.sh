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
made=$target/$profile/bundle/made
mkdir -p "$made/debian"

# Apart, so that the window gets a core without a command line.
cargo build --locked "${flags[@]}" --package mendline-core >&2
cargo build --locked "${flags[@]}" --package mendline-app >&2

node copyright.mjs > "$made/copyright"

# What Debian reads of the changelog: one entry for this version, at the time of the last change.
version=$(sed -n '/^\[workspace.package\]/,/^\[/s/^version = "\(.*\)"/\1/p' ../Cargo.toml)
publisher=$(node --print 'require("./tauri.conf.json").bundle.publisher')
{
  printf 'mendline (%s) unstable; urgency=medium\n\n' "$version"
  awk '/^## /{n++} n==1 && /^- /' ../CHANGELOG.md | while read -r line; do fold --spaces --width=74 <<< "${line#- }" | sed '1s/^/  * /; 1!s/^/    /; s/ *$//'; done
  printf '\n -- %s  %s\n' "$publisher" "$(git log -1 --format=%cD)"
} | gzip --best --no-name > "$made/changelog.gz"

# The libraries that both programs are linked with, as Debian calls them, none older than those here.
printf 'Source: mendline\n\nPackage: mendline\nArchitecture: any\n' > "$made/debian/control"
depends=$(cd "$made" && dpkg-shlibdeps -O "$target/$profile/mendline" "$target/$profile/mendline-app" | sed -n 's/^shlibs:Depends=//p')

config=$(printf '{"bundle":{"linux":{"deb":{"depends":["%s"],"files":{"/usr/bin/mendline":"%s","/usr/share/doc/mendline/copyright":"%s","/usr/share/doc/mendline/changelog.gz":"%s"}}}}}' \
  "${depends//, /\",\"}" "$target/$profile/mendline" "$made/copyright" "$made/changelog.gz")
node_modules/.bin/tauri bundle "${tauri[@]}" --bundles deb --config "$config" >&2
ls -t "$target/$profile/bundle/deb/"*.deb | head -1
