#!/bin/bash
# Type-checks the window for Android phones, where no Android kit is installed: no app is built.
#
# Debian's rustc-web and the source of its standard library are unpacked below target/, not installed. What compiles C
# (SQLite) gets a compiler that only makes its output file, because a type check never links.
# usage: tests/android-check.sh [arguments of cargo check; without them: -p mendline-app --lib]
set -euo pipefail
cd "$(dirname "$0")/.."
kit=$PWD/target/android-check
mkdir -p "$kit/packages" "$kit/fake"

unpack() {
  local std llvm
  std=$(apt-cache depends libstd-rust-web-dev | awk '/Depends: libstd-rust-web-[0-9]/ {print $2; exit}')
  llvm=$(apt-cache depends "$std" | awk '/Depends: libllvm/ {print $2; exit}')
  (cd "$kit/packages" && apt-get download rustc-web rust-web-src libstd-rust-web-dev "$std" "$llvm")
  for package in "$kit"/packages/*.deb; do dpkg -x "$package" "$kit/unpacked"; done
}

if [ ! -x "$kit/unpacked/usr/bin/rustc" ]; then unpack; fi
cat > "$kit/fake/cc" <<'FAKE'
#!/bin/sh
last=
for word in "$@"; do
  if [ "$last" = -o ]; then : > "$word"; fi
  last=$word
done
FAKE
cat > "$kit/fake/ar" <<'FAKE'
#!/bin/sh
for word in "$@"; do
  case $word in *.a) : > "$word" ;; esac
done
FAKE
chmod +x "$kit/fake/cc" "$kit/fake/ar"
export CC_aarch64_linux_android=$kit/fake/cc AR_aarch64_linux_android=$kit/fake/ar
export LD_LIBRARY_PATH=$kit/unpacked/usr/lib/x86_64-linux-gnu RUSTC=$kit/unpacked/usr/bin/rustc RUSTC_BOOTSTRAP=1
export CARGO_TARGET_DIR=$kit/target
[ $# -gt 0 ] || set -- -p mendline-app --lib
exec cargo check --locked -Zbuild-std=std,panic_abort --target aarch64-linux-android "$@"
