#!/usr/bin/env bash
# Measures how the packaged tool prints pictures and prints each figure as a ratio within this run.
# Wants: target/ribband (mvn package), vips and vipsthumbnail, GNU time.
# Usage: src/bench/pictures.sh [FOLDER]   the folder, about 0.4 GB, is made and left for a second look.
# ROUNDS=5 is how often each side runs, in turn, so that other work on the machine falls on both.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
ribband=$here/../../target/ribband/bin/ribband
shop=${1:-$(mktemp -d)}
rounds=${ROUNDS:-5}
mkdir -p "$shop"
cd "$shop"
export LC_ALL=C.UTF-8

journal() { # FOLDER COUNT [progressive]
  [ -f "$1/project.yaml" ] && return
  java "$here/MakePictures.java" "$1/2026-01-01" "${@:2}"
  printf -- '---\nphase: a\nhours: 1\n---\n' >"$1/2026-01-01.md"
  printf 'name: Bench\n' >"$1/project.yaml"
}
publish() { # FOLDER
  rm -rf "$1-out"
  mkdir "$1-out"
  "$ribband" publish "$1" -o "$1-out/site"
}
vips() { # FOLDER
  rm -rf vips && mkdir vips
  for size in 480 960 1600; do
    printf '%s\n' "$1"/2026-01-01/*.jpg |
      xargs -n 20 -P 2 vipsthumbnail --size "${size}x" -o "$shop/vips/%s-$size.jpg[Q=82]"
  done
}
export -f publish vips
export ribband shop

middle() { sort -g | awk '{ at[NR] = $1 } END { print at[int((NR + 1) / 2)] }'; }
column() { cut -d' ' -f"$1" "$2" | middle; }

# took FILE COMMAND...: adds a line to it: seconds by the clock, seconds of processor, MB held at most.
took() {
  /usr/bin/time -o took -f '%e %U %S %M' bash -c "${*:2}" >/dev/null 2>&1
  awk '{ print $1, $2 + $3, int($4 / 1024) }' took >>"$1"
}
# row WHAT OURS THEIRS RATIO REACH
row() { printf '%-60s %9s %9s %8s  %s\n' "$@"; }
# pairs WHAT COLUMN OURS THEIRS REACH: medians of both, and the median of the ratios pair by pair.
pairs() {
  row "$1" "$(column "$2" "$3")" "$(column "$2" "$4")" \
    "$(paste -d' ' <(cut -d' ' -f"$2" "$3") <(cut -d' ' -f"$2" "$4") |
      awk '{ printf "%.3f\n", $1 / $2 }' | middle)" "$5"
}
likeness() { java -Djava.awt.headless=true -cp . Likeness "$@"; }

journal photos 40
journal plain 8
journal progressive 8 progressive
journal looks 2
javac -d . "$here/Likeness.java"

rm -f ./*.times
for ((i = 0; i < rounds; i++)); do
  took ours.times publish photos
  took theirs.times vips photos
  took plain.times publish plain
  took progressive.times publish progressive
done

row "" ribband against ratio reach
pairs "40 pictures of 12 megapixels, s / vipsthumbnail" 1 ours.times theirs.times 0.95
pairs "the same, s of processor" 2 ours.times theirs.times ""
memory=$(column 3 ours.times)
row "memory of that run, MB / 560" "$memory" 560 "$(awk "BEGIN { printf \"%.3f\", $memory / 560 }")" 1
pairs "8 progressive, s of processor / the same, baseline" 2 progressive.times plain.times 4

publish looks >/dev/null 2>&1
for name in p00 p01; do
  command vips autorot "looks/2026-01-01/$name.jpg" upright.v
  for size in 480 960 1600; do
    scale=$(awk "BEGIN { printf \"%.12f\", $size / $(vipsheader -f width upright.v) }")
    command vips resize upright.v reference.png "$scale" --kernel lanczos3
    vipsthumbnail "looks/2026-01-01/$name.jpg" --size "${size}x" -o "$shop/theirs.jpg[Q=82]"
    shape=$(vipsheader -f width reference.png)x$(vipsheader -f height reference.png)
    # The name of a print holds no trace of its picture: it is the one most alike.
    ours=$(likeness reference.png looks-out/site/pictures/*-"$size".jpg)
    theirs=$(likeness reference.png theirs.jpg)
    row "SSIM to lossless lanczos, $shape, less vipsthumbnail's" "$ours" "$theirs" \
      "$(awk "BEGIN { printf \"%.4f\", $ours - $theirs }")" -0.008
  done
done
