# The same site under other skies: zones, locales, encodings, cores.

sky() { # sky N JAVA'S-WORD COMMAND: the sites as they come out under another sky
  local round=skies-$1 wanted=$2 said journal
  shift 2
  count tried
  # Where a language or a zone is not on the machine, Java falls back without a word.
  said=$(cd "$shop" && "$@" "$javas" -cp "$shop" Sky 2>/dev/null)
  # shellcheck disable=SC2053
  [[ $said == $wanted ]] || broken "$round" "the sky is \"$said\", not \"$wanted\", under: $*"
  for journal in new sample; do
    (cd "$shop" && "$@" "${start[@]}" publish "$shop/$journal" -o "$shop/$round/$journal") >"$shop/$round.out" 2>&1 ||
      broken "$round" "$* ended with $?" "$shop/$round.out"
    if diff -r "$shop/$journal-site" "$shop/$round/$journal" >"$shop/$round.diff"; then
      count whole
    else
      broken "$round" "another site of $journal under: $*" "$shop/$round.diff"
    fi
  done
  rm -rf "${shop:?}/$round"
}
group_skies() { # the same site to the byte, wherever and whenever the builder is
  local n=0 javas language start
  javas=$(command -v java)
  cp -a sample-journal "$shop/sample"
  rm -rf "$shop/sample/site" "$shop/sample/.ribband"
  # Most of a run's time goes into its pictures, which are bytes: eight are enough, one of them in many places.
  find "$shop/sample" -name '*.jpg' -printf '%s %p\n' | sort -n | cut -d' ' -f2- >"$shop/pictures"
  sed '1~6d' "$shop/pictures" | while read -r picture; do cp "$(head -1 "$shop/pictures")" "$picture"; done
  state "$shop/sample" >"$shop/sample.state"
  "$ribband" publish "$shop/sample" -o "$shop/sample-site" >/dev/null || broken skies "cannot publish the sample journal"
  javac -d "$shop" "$here/Sky.java" || broken skies "cannot compile Sky.java"
  mkdir "$shop/locales"
  for language in tr_TR ar_EG de_DE; do
    localedef -i $language -f UTF-8 --no-archive "$shop/locales/$language.UTF-8" || broken skies "no locale $language"
  done
  under() { # under WORD COMMAND...
    slot
    n=$((n + 1))
    sky $n "$@" &
  }
  start=("$ribband")
  for language in C POSIX; do under 'en* 0 * US-ASCII *' env LC_ALL=$language; done
  for language in tr_TR ar_EG de_DE; do
    under "$language 0 * UTF-8 *" env LOCPATH="$shop/locales" LC_ALL=$language.UTF-8 LANG=$language.UTF-8
  done
  under 'tr_TR 0 *' env JAVA_TOOL_OPTIONS='-Duser.language=tr -Duser.country=TR'
  under 'ar_EG_#u-nu-arab 0 *' env JAVA_TOOL_OPTIONS='-Duser.language=ar -Duser.country=EG -Duser.extensions=u-nu-arab'
  under '* 14 *' env TZ=Pacific/Kiritimati
  under '* -10 *' env TZ=Pacific/Honolulu
  under '* * 2031 *' faketime '2031-12-31 23:59:30'
  under 'en* 0 * US-ASCII *' env -i PATH="$PATH"
  under '* ISO-8859-1 1' env JAVA_TOOL_OPTIONS='-Dfile.encoding=ISO-8859-1 -XX:ActiveProcessorCount=1'
  # With no variable at all, not even the start script's.
  start=("$javas" -jar "$shop/app/lib/ribband.jar")
  under 'en* 0 * US-ASCII *' env -i
  wait
  state "$shop/sample" | cmp -s - "$shop/sample.state" || broken skies "the sample journal is not as it was"
}
