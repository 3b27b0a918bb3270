#!/bin/bash
# Puts what the phone has to be asked for into an Android manifest, each line once; the rest of the file stays.
#
# usage: src-tauri/android-manifest.sh AndroidManifest.xml
set -euo pipefail
manifest=$1
grep --quiet '</manifest>' "$manifest" || { echo "$manifest is not a manifest" >&2; exit 1; }
# Source: developer.android.com, Manifest.permission. A receiver of positions and a camera are wished for, never demanded.
lines=(
  '<uses-permission android:name="android.permission.ACCESS_FINE_LOCATION" />'
  '<uses-permission android:name="android.permission.ACCESS_COARSE_LOCATION" />'
  '<uses-permission android:name="android.permission.POST_NOTIFICATIONS" />'
  '<uses-permission android:name="android.permission.VIBRATE" />'
  '<uses-permission android:name="android.permission.WAKE_LOCK" />'
  '<uses-feature android:name="android.hardware.location.gps" android:required="false" />'
  '<uses-feature android:name="android.hardware.camera" android:required="false" />'
)
for line in "${lines[@]}"; do
  name=${line#*\"}; name=${name%%\"*}
  grep --quiet --fixed-strings "\"$name\"" "$manifest" || sed --in-place "0,/<application/s||    $line\n    <application|" "$manifest"
done
