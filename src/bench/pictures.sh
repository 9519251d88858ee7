#!/usr/bin/env bash
# Measures how the packaged tool prints pictures and prints each figure as a ratio within this run.
# Wants: target/ribband (mvn package), vips and vipsthumbnail, ImageMagick's compare, GNU time.
# Usage: src/bench/pictures.sh [FOLDER]   the folder, about 0.5 GB, is made and left for a second look.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
self=$here/$(basename "$0")
ribband=$here/../../target/ribband/bin/ribband
if [ "${1:-}" = --only ]; then
  only=("${@:3}")
  shift
fi
shop=${1:-$(mktemp -d)}
mkdir -p "$shop"
cd "$shop"
export LC_ALL=C.UTF-8

journal() { # FOLDER COUNT [progressive]
  [ -f "$1/project.yaml" ] && return
  java "$here/MakePictures.java" "$1/2026-01-01" "${@:2}"
  printf -- '---\nphase: a\nhours: 1\n---\n' >"$1/2026-01-01.md"
  printf 'name: Bench\n' >"$1/project.yaml"
}
publish() {
  rm -rf "$1-out"
  mkdir "$1-out"
  "$ribband" publish "$1" -o "$1-out/site"
}
vips() {
  rm -rf vips && mkdir vips
  for size in 480 960 1600; do
    printf '%s\n' photos/2026-01-01/*.jpg |
      xargs -n 20 -P 2 vipsthumbnail --size "${size}x" -o "$shop/vips/%s-$size.jpg[Q=82]"
  done
}

# timed N COMMAND...: of N runs the median second by the clock, of processor, and most MB held.
timed() {
  local n=$1 i column
  shift
  for ((i = 0; i < n; i++)); do
    /usr/bin/time -o took -f '%e %U %S %M' "$self" --only "$shop" "$@" >/dev/null 2>&1
    awk '{ print $1, $2 + $3, int($4 / 1024) }' took
  done >runs
  for column in 1 2 3; do
    cut -d' ' -f$column runs | sort -g | sed -n "$(((n + 1) / 2))p"
  done | xargs
}
row() { printf '%-58s %9s %9s %8s\n' "$1" "$2" "$3" "$(awk "BEGIN { printf \"%.3f\", $2 / $3 }")"; }
likeness() { compare -metric SSIM "$1" "$2" null: 2>&1 | awk '{ print $1 }' || true; }

# The name of a print holds no trace of its picture: it is the one most alike.
print_of() { # REFERENCE SIZE
  local best=0 now
  for print in looks-out/site/pictures/*-"$2".jpg; do
    [ "$(identify -format %wx%h "$print")" = "$(identify -format %wx%h "$1")" ] || continue
    now=$(likeness "$1" "$print")
    best=$(printf '%s\n%s\n' "$best" "$now" | sort -g | tail -1)
  done
  echo "$best"
}

# One step alone, so that it can be timed as a process.
if [ -n "${only+x}" ]; then
  "${only[@]}"
  exit
fi

journal photos 40
journal plain 8
journal progressive 8 progressive
journal looks 2

printf '%-58s %9s %9s %8s\n' "" "ribband" "against" "ratio"
read -r clock work memory < <(timed 3 publish photos)
read -r vips_clock vips_work _ < <(timed 3 vips)
row "40 pictures of 12 megapixels, s / vipsthumbnail" "$clock" "$vips_clock"
row "the same, s of processor" "$work" "$vips_work"
row "memory of that run, MB / 560" "$memory" 560
read -r _ plain _ < <(timed 3 publish plain)
read -r _ several _ < <(timed 3 publish progressive)
row "8 progressive, s of processor / the same, baseline" "$several" "$plain"

publish looks >/dev/null 2>&1
for name in p00 p01; do
  /usr/bin/env vips autorot "looks/2026-01-01/$name.jpg" upright.v
  for size in 480 960 1600; do
    scale=$(awk "BEGIN { printf \"%.12f\", $size / $(vipsheader -f width upright.v) }")
    /usr/bin/env vips resize upright.v reference.png "$scale" --kernel lanczos3
    vipsthumbnail "looks/2026-01-01/$name.jpg" --size "${size}x" -o "$shop/theirs.jpg[Q=82]"
    shape=$(identify -format '%wx%h' reference.png)
    row "SSIM to lossless lanczos, $shape / vipsthumbnail's" \
      "$(print_of reference.png "$size")" "$(likeness reference.png theirs.jpg)"
  done
done
