# Every command that reads a journal opens it for reading and for nothing else.

reads() { # reads ROUND FROM JOURNAL OWN COMMAND...: no call of the run could change the journal
  local round=$1 from=$2 journal=$3 own=$4
  shift 4
  count tried
  (cd "$from" && strace -f -qq -y -s 0 -e signal=none -o "$shop/$round.calls" -e trace=%file,%desc "$@") \
    >"$shop/$round.out" 2>&1 || broken "$round" "$* ended with $?" "$shop/$round.out"
  # shellcheck disable=SC2086
  python3 "$here/trace.py" writes "$shop/$round.calls" "$from" "$journal" $own >"$shop/$round.odd" ||
    broken "$round" "calls that could change the journal" "$shop/$round.odd"
  as_it_was "$round"
}
group_reading() { # every command that reads a journal opens it for reading and for nothing else
  local new=$shop/new inner=$shop/inner before
  printf 'Date,Hours,Phase\n2026-01-09,2:15,backbone\n' >"$shop/brought.csv"
  reads reading-check "$shop" "$new" '' "$ribband" check "$new"
  reads reading-inside "$new" "$new" '' "$ribband" check --format json
  reads reading-tally "$shop" "$new" '' "$ribband" tally "$new" --by phase --format csv
  reads reading-ahead "$shop" "$new" '' "$ribband" ahead "$new" --evening 2h30 --clamps 36
  reads reading-recap "$shop" "$new" '' "$ribband" recap "$new" --format html
  reads reading-bring "$shop" "$new" '' "$ribband" bring "$shop/brought.csv" "$new"
  reads reading-publish "$shop" "$new" '' "$ribband" publish "$new" -o "$shop/reading/site"
  # As most will have it: the site in the journal, published from within it, twice.
  cp -a "$new" "$inner"
  before=$(state "$inner")
  for run in 1 2; do
    reads reading-inner-$run "$inner" "$inner" "$inner/site $inner/.ribband" "$ribband" publish
    rm -rf "$shop/inner-made" && cp -a "$inner" "$shop/inner-made" && rm -rf "$shop/inner-made/site" "$shop/inner-made/.ribband"
    # Two folders came into the journal's own, whose time tells that; nothing else may have changed.
    [ "$(state "$shop/inner-made" | sed 1d)" = "$(sed 1d <<<"$before")" ] ||
      broken "reading-inner-$run" "the journal is not as it was"
  done
  diff -r "$shop/new-site" "$inner/site" >"$shop/inner.diff" || broken reading "another site in the journal" "$shop/inner.diff"
}
