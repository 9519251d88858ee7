# What is looked at after each round: whether all is whole, and what was told.

sums() { (cd "$1" && find . -type f -print0 | sort -z | xargs -0r sha256sum); }
state() { # state FOLDER: names, kinds, modes, sizes, times and bytes
  (cd "$1" && find . -printf '%P %y %m %s %T@\n' | sort) && sums "$1"
}
broken() { # broken ROUND SENTENCE [FILE]
  printf 'faults: %s: %s\n' "$1" "$2" | tee -a "$shop/broken/$group" >&2
  [ -z "${3-}" ] || sed 's/^/    /' "$3" | head -20 >&2
}
count() { echo "$1" >>"$shop/done/$group"; }

# as_it_was ROUND: the journal's names, kinds, modes, times and bytes are those of the beginning.
as_it_was() {
  local journal
  for journal in old new; do
    state "$shop/$journal" | cmp -s - "$shop/$journal.state" || broken "$1" "the journal $journal is not as it was"
  done
}
# whole ROUND SITE: each file is the old one or the new one, to the byte, and nothing leads nowhere.
whole() {
  local odd
  [ -d "$2" ] || { count whole; return; }
  odd=$(sums "$2" | grep -v ' ./site-files.txt$' | sort | comm -23 - "$shop/known")
  [ -z "$odd" ] || { broken "$1" "files that are neither the old nor the new ones: $odd"; return; }
  if [ -n "$(find "$2" -type f)" ]; then
    odd=$(sums "$2" | grep -v ' ./site-files.txt$' | sed 's| \./| |' | sort | comm -23 - <(sort "$2/site-files.txt"))
    [ -z "$odd" ] || { broken "$1" "files of ours that the list does not name so: $odd"; return; }
  fi
  python3 "$here/links.py" "$2" >"$shop/links-$1" || { broken "$1" "dead links" "$shop/links-$1"; return; }
  count whole
}
untouched() { # untouched ROUND SITE: the old site, to the byte, or still none
  local was=${3:-$shop/stand.state}
  if [ ! -s "$was" ]; then
    [ ! -d "$2" ] || [ -z "$(ls -A "$2")" ] || broken "$1" "files are in the site before any list"
  elif [ -d "$2" ]; then
    state "$2" | cmp -s - "$was" || broken "$1" "the old site was touched though nothing was published"
  else
    broken "$1" "the old site is gone"
  fi
}
finishes() { # finishes ROUND SITE: the next run makes the site that a clean run makes, and clears up
  local code=0
  "$ribband" publish "$shop/new" -o "$2" >"$shop/next-$1" 2>&1 || code=$?
  if [ $code != 0 ]; then
    broken "$1" "the next run ended with $code" "$shop/next-$1"
  elif ! diff -r "$shop/new-site" "$2" >"$shop/diff-$1"; then
    broken "$1" "the next run made another site" "$shop/diff-$1"
  elif [ -e "$(dirname "$2")/.ribband/staging" ]; then
    broken "$1" "the next run left its staging folder"
  else
    count finished
  fi
  as_it_was "$1"
}
# told ROUND ERR [WORDS]: one line of ours, and no trace of a stack.
told() {
  if [ "$(wc -l <"$2")" != 1 ] || ! grep -q '^ribband: ' "$2" || grep -qE 'Exception|^\s+at ' "$2"; then
    broken "$1" "this is not one clear line" "$2"
  elif [ -n "${3-}" ] && ! grep -qF -- "$3" "$2"; then
    broken "$1" "this does not say: $3" "$2"
  fi
}
