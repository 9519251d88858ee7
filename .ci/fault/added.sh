# Entries and pictures that are added to a journal.

# adds HOW JOURNAL: the words of a command that adds entries, in the array `words`.
adds() {
  case $1 in
    tonight) words=(tonight "$2" --date 2026-05-30 --photos "$shop/card") ;;
    bring) words=(bring "$shop/past.csv" "$2" --write) ;;
  esac
}
# pictured JOURNAL: each picture of the card is in the journal once, and in one entry.
pictured() {
  local picture
  for picture in "$shop"/card/*.jpg; do
    [ "$(sums "$1" | grep -c "^$(sha256sum <"$picture" | cut -c1-64) ")" = 1 ] || { echo "not there once: $picture"; return 1; }
    [ "$(cat "$1"/2026-05-30*.md | grep -c "$(basename "$picture")")" = 1 ] || { echo "not in one entry: $picture"; return 1; }
  done
}
# added HOW ROUND JOURNAL: what was there is as it was, what came is whole, and the same command again ends with all of
# it, once.
added() {
  local how=$1 round=$2 journal=$3 code=0 odd words
  (cd "$journal" && sha256sum --quiet -c "$shop/new.sums") >"$shop/was-$round" 2>&1 ||
    broken "$round" "the journal's own files are not as they were" "$shop/was-$round"
  odd=$(sums "$journal" | grep -v '/\.ribband-[0-9]*\.new$' | cut -c1-64 | sort -u | comm -23 - "$shop/$how.known")
  if [ -z "$odd" ]; then count whole; else broken "$round" "files that are half there: $odd"; fi
  adds "$how" "$journal"
  "$ribband" "${words[@]}" >"$shop/next-$round" 2>&1 || code=$?
  if [ $code != 0 ]; then
    broken "$round" "the next run ended with $code" "$shop/next-$round"
  elif [ "$how" = bring ] && ! diff -r "$shop/bring-made" "$journal" >"$shop/diff-$round"; then
    broken "$round" "the next run made another journal" "$shop/diff-$round"
  elif [ "$how" = tonight ] && ! pictured "$journal" >"$shop/diff-$round"; then
    broken "$round" "the next run lost or doubled a picture" "$shop/diff-$round"
  elif ! "$ribband" check -q "$journal" >"$shop/next-$round" 2>&1; then
    broken "$round" "the journal has errors" "$shop/next-$round"
  elif [ -n "$(find "$journal" -name '.ribband-*.new')" ]; then
    broken "$round" "something still waits in the journal"
  else
    count finished
  fi
}
# misadded HOW CALL FAULT WHEN: entries added while a call goes wrong.
misadded() {
  local how=$1 round=added-$1-$2-${3//[^A-Z]/}-${4/+/on} code=0 journal words
  round=${round//,/-}
  journal=$shop/$round
  cp -a "$shop/new" "$journal"
  adds "$how" "$journal"
  {
    strace -f -qq -e signal=none -o "$shop/$round.calls" -e "trace=$2" -e "inject=$2:$3:when=$4" \
      "${java[@]}" "${words[@]}" >"$shop/$round.out" 2>"$shop/$round.err" || code=$?
  } 2>/dev/null
  if [ $code != 137 ] && ! grep -q INJECTED "$shop/$round.calls"; then
    [ "$4" != 1 ] && [ "$4" != 1+ ] || broken "$round" "the call was never made" "$shop/$round.err"
    rm -rf "${journal:?}"
    return
  fi
  count tried
  case $3 in
    *KILL*)
      count killed
      [ $code = 137 ] || broken "$round" "it was to be killed and ended with $code"
      ;;
    *)
      count refused
      [ $code = 3 ] || broken "$round" "ended with $code" "$shop/$round.err"
      grep -q '^ribband: ' "$shop/$round.err" && ! grep -qE 'Exception|^\s+at ' "$shop/$round.err" ||
        broken "$round" "this is not clearly told" "$shop/$round.err"
      ;;
  esac
  added "$how" "$round" "$journal"
  rm -rf "${journal:?}"
}
group_added() { # entries and pictures that are added to a journal
  local how when journal words code
  mkdir "$shop/card"
  cp sample-journal/2026/2026-05-02-*/*.jpg sample-journal/2026/2026-05-16-*/*.jpg "$shop/card"
  cat >"$shop/past.csv" <<'CSV'
Date,Hours,Phase,Cost,Note
2026-01-09,2:15,backbone,31.20,Two laminations
2026-01-10,1.5,backbone,,"Planed, and planed again"
2026-01-16,0:45,planking,-4.00,Took the odd ones back
2026-01-17,3,planking,12.00,
CSV
  (cd "$shop/new" && find . -type f -print0 | sort -z | xargs -0 sha256sum) >"$shop/new.sums"
  for how in tonight bring; do
    cp -a "$shop/new" "$shop/$how-made"
    adds $how "$shop/$how-made"
    "$ribband" "${words[@]}" >"$shop/$how.out" 2>&1 || { broken added "$how ended with $?" "$shop/$how.out"; return; }
    sums "$shop/$how-made" | cut -c1-64 | sort -u >"$shop/$how.known"
    cmp -s <(cut -c1-64 "$shop/new.sums" | sort -u) "$shop/$how.known" && { broken added "$how added nothing" "$shop/$how.out"; return; }
  done
  pictured "$shop/tonight-made" || broken added "tonight did not bring the pictures" "$shop/tonight.out"
  for how in tonight bring; do
    for when in $(turns 4); do slot; misadded $how link,linkat signal=KILL $when & done
    for when in $(turns 8); do slot; misadded $how $flushes signal=KILL $when & done
    for when in $(turns 4); do slot; misadded $how unlink,unlinkat signal=KILL $when & done
    # The folder of an entry is there; that of its pictures is not.
    [ $how = bring ] || misadded $how $makings signal=KILL 1
    wait
    misadded $how $flushes error=EIO 1+
    misadded $how link,linkat,$moves error=EIO 1+
    # A disk that is full before the first file, or after some.
    for when in 0 60; do
      journal=$shop/disk-added-$how-$when code=0
      mkdir "$journal"
      mount -t tmpfs -o size=8m tmpfs "$journal" || { broken added "no small disk can be mounted here"; return; }
      cp -a "$shop/new/." "$journal"
      head -c $(($(df --output=avail -B1 "$journal" | tail -1) - when * 1024)) /dev/zero >"$journal/.filler"
      adds $how "$journal"
      count tried
      "$ribband" "${words[@]}" >"$shop/$group-full.out" 2>"$shop/$group-full.err" || code=$?
      if [ $code = 0 ]; then
        [ $how = bring ] || broken "added-full-$how-$when" "it fitted"
      else
        count refused
        [ $code = 3 ] && grep -q 'No space left on device' "$shop/$group-full.err" || broken "added-full-$how-$when" "ended with $code" "$shop/$group-full.err"
      fi
      rm "$journal/.filler"
      [ $code = 0 ] || added $how "added-full-$how-$when" "$journal"
      umount "$journal"
    done
    # A folder that nobody else may write into.
    journal=$shop/added-$how-denied code=0
    cp -a "$shop/new" "$journal"
    chmod -R a-w "$journal"
    adds $how "$journal"
    count tried
    setpriv --reuid=65534 --regid=65534 --clear-groups "$ribband" "${words[@]}" >"$shop/$group-denied.out" 2>"$shop/$group-denied.err" || code=$?
    [ $code = 3 ] && grep -q 'permission denied' "$shop/$group-denied.err" || broken "added-$how-denied" "ended with $code" "$shop/$group-denied.err"
    count refused
    chmod -R u+w "$journal"
    added $how "added-$how-denied" "$journal"
  done
}
