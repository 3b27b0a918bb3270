#!/bin/bash
# Draws the mark: a pipe in section with a patch on its wall. Needs ImageMagick. The results are kept beside this file.
set -euo pipefail
cd "$(dirname "$0")"
large=$(mktemp --suffix=.png)
trap 'rm -f "$large"' EXIT
convert -size 1024x1024 xc:none \
  -fill '#f7f6f1' -draw 'roundrectangle 0,0 1023,1023 220,220' \
  -fill none -stroke '#12171d' -strokewidth 104 -draw 'ellipse 512,512 328,328 0,360' \
  -stroke none -fill '#1a2ab0' -draw "path 'M 258,439 A 264,264 0 0,1 766,439 L 670,467 A 164,164 0 0,0 354,467 Z'" \
  "$large"
for size in 32 128 256 512; do
  convert "$large" -resize "${size}x${size}" -strip -define png:exclude-chunks=date,time "PNG32:${size}x${size}.png"
done
mv 512x512.png icon.png
