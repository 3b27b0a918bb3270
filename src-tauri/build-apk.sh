#!/bin/bash
# Builds the Android package (APK), where the Android SDK and NDK are installed. Prints its path; docs/android.md says
# what was tried. Nothing is installed here: what is missing is named, all of it at once, and nothing is begun.
#
# usage: src-tauri/build-apk.sh [--debug] [--check]
#   --debug   a package signed with the SDK's debug key, to be put on a phone at once
#   --check   only says whether everything is there
# environment: ANDROID_HOME, NDK_HOME, JAVA_HOME (or java in the path); for a release, sign the printed APK with apksigner
set -euo pipefail
cd "$(dirname "$0")"
# Phones of the last years; another list by TARGETS, as `tauri android build --target` takes it.
read -ra targets <<< "${TARGETS:-aarch64}"
flags=() only_check=
for word in "$@"; do
  case $word in
    --debug) flags+=(--debug) ;;
    --check) only_check=yes ;;
    *) echo "unknown: $word. usage: src-tauri/build-apk.sh [--debug] [--check]" >&2; exit 2 ;;
  esac
done

missing=()
lacks() { missing+=("$1"); }
rust_target() {
  case $1 in
    aarch64) echo aarch64-linux-android ;; armv7) echo armv7-linux-androideabi ;;
    i686) echo i686-linux-android ;; x86_64) echo x86_64-linux-android ;;
    *) echo "unknown target: $1. TARGETS may hold aarch64, armv7, i686, x86_64" >&2; exit 2 ;;
  esac
}

sdk=${ANDROID_HOME:-}
if [ -z "$sdk" ]; then lacks "the Android SDK: set ANDROID_HOME to its folder"
elif [ ! -d "$sdk/platforms" ] || [ ! -d "$sdk/build-tools" ]; then lacks "a platform and the build tools in ANDROID_HOME ($sdk): sdkmanager 'platforms;android-36' 'build-tools;36.0.0'"
fi
if [ -z "${NDK_HOME:-}" ]; then lacks "the Android NDK: set NDK_HOME to its folder"
elif [ ! -d "$NDK_HOME/toolchains/llvm/prebuilt" ]; then lacks "the compilers of the NDK in NDK_HOME ($NDK_HOME)"
fi
if [ -n "${JAVA_HOME:-}" ]; then [ -x "$JAVA_HOME/bin/javac" ] || lacks "a JDK in JAVA_HOME ($JAVA_HOME), version 17 or newer"
elif ! command -v javac > /dev/null; then lacks "a JDK, version 17 or newer: set JAVA_HOME"
fi
for tool in cargo npm; do command -v "$tool" > /dev/null || lacks "$tool in the path"; done
for target in "${targets[@]}"; do
  triple=$(rust_target "$target")
  [ -d "$(rustc --print sysroot)/lib/rustlib/$triple" ] || lacks "Rust's standard library for $triple: rustup target add $triple"
done
if (( ${#missing[@]} )); then
  echo "The APK can't be built here. Missing:" >&2
  printf -- '- %s\n' "${missing[@]}" >&2
  exit 1
fi
if [ -n "$only_check" ]; then echo "Everything is there."; exit 0; fi

[ -x node_modules/.bin/tauri ] || npm ci --no-audit --no-fund >&2
export JAVA_HOME=${JAVA_HOME:-$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")}
# The Gradle project is made, not kept: it follows from the configuration. Our lines in its manifest are put in once.
if [ ! -d gen/android ]; then node_modules/.bin/tauri android init --ci --skip-targets-install >&2; fi
./android-manifest.sh gen/android/app/src/main/AndroidManifest.xml
node_modules/.bin/tauri android build --apk --ci "${flags[@]}" --target "${targets[@]}" >&2
find gen/android/app/build/outputs/apk -name '*.apk' -printf '%T@ %p\n' | sort -n | tail -1 | cut -d' ' -f2- | sed "s|^|$PWD/|"
