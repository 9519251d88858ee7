# Rights that are not there.

# nobody ROUND EXIT WORDS (a pattern): the user nobody publishes where something may not be read or written.
nobody() {
  local round=$1 exit=$2 words=$3 code=0
  count tried
  state "$shop/$round/journal" >"$shop/$round.before"
  state "$shop/$round/www/site" >"$shop/$round.stood"
  setpriv --reuid=65534 --regid=65534 --clear-groups "$ribband" publish "$shop/$round/journal" \
    -o "$shop/$round/www/site" >"$shop/$round.out" 2>"$shop/$round.err" || code=$?
  [ $code = "$exit" ] || broken "$round" "ended with $code, not $exit" "$shop/$round.err"
  # shellcheck disable=SC2053
  [[ $(cat "$shop/$round.err") == $words ]] || broken "$round" "this is not: $words" "$shop/$round.err"
  if grep -qE 'Exception|^\s+at ' "$shop/$round.err"; then broken "$round" "a stack trace" "$shop/$round.err"; fi
  if [ $exit = 3 ]; then told "$round" "$shop/$round.err"; fi
  state "$shop/$round/journal" | cmp -s - "$shop/$round.before" || broken "$round" "the journal is not as it was"
  count refused
}
place() { # place ROUND: a journal and the old site that are nobody's own
  mkdir -p "$shop/$1/www"
  cp -a "$shop/new" "$shop/$1/journal"
  cp -a "$shop/stand/." "$shop/$1/www/"
  chown -R 65534:65534 "$shop/$1"
}
restored() { # restored ROUND: rights given back, the next run finishes
  whole "$1" "$shop/$1/www/site"
  chmod -R u+rwX "$shop/$1"
  finishes "$1" "$shop/$1/www/site"
}
group_denied() {
  local what place first line
  for what in .ribband .ribband/lock; do
    place=denied-${what//\//-}
    place "$place"
    rm -rf "$shop/$place/www/.ribband"
    if [ $what = .ribband ]; then
      line="cannot make the folder $shop/$place/www/.ribband"
      chmod 555 "$shop/$place/www"
    else
      line="cannot lock $shop/$place/www/.ribband/lock"
      mkdir -m 555 "$shop/$place/www/.ribband"
    fi
    nobody "$place" 3 "ribband: $line: permission denied"
    untouched "$place" "$shop/$place/www/site" "$shop/$place.stood"
    restored "$place"
  done
  for what in . entries pictures; do
    place=denied-site-$what
    place "$place"
    chmod 555 "$shop/$place/www/site/$what"
    case $what in .) first=site-files.txt ;; entries) first=entries/2026-04-04-second.html ;; *) first='pictures/*.jpg' ;; esac
    nobody "$place" 3 "ribband: cannot put in place $shop/$place/www/site/$first: permission denied"
    [ $what != . ] || untouched "$place" "$shop/$place/www/site" "$shop/$place.stood"
    restored "$place"
  done
  for what in project.yaml 2026-03-02-keel.md 2026-03-14-garboard/twist.png 2026-03-14-garboard; do
    place=unread-${what//\//-}
    place "$place"
    chmod 000 "$shop/$place/journal/$what"
    case $what in
      *.png)
        nobody "$place" 1 "2026-03-14-garboard.md:1:1: error: picture \"$what\" cannot be read ($shop/$place/journal/$what); check its permissions
1 error in 4 entries, nothing was published"
        ;;
      *garboard) nobody "$place" 3 "ribband: $shop/$place/journal/$what: permission denied" ;;
      *)
        nobody "$place" 1 "$what: error: the file cannot be opened; check who may read it
1 error in 4 entries, nothing was published"
        ;;
    esac
    untouched "$place" "$shop/$place/www/site" "$shop/$place.stood"
    restored "$place"
  done
}
