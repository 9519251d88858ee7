# Two runs at once.

group_together() { # two runs beside one output: one has it, the other says so or comes after
  local i site one two a b
  held_by_another
  for i in $(seq "${FAULTS_TOGETHER:-8}"); do
    local round=together-$i
    site=$(stand "$round" old) a=0 b=0
    "$ribband" publish "$shop/new" -o "$site" >"$shop/$round.a" 2>&1 & one=$!
    "$ribband" publish "$shop/new" -o "$site" >"$shop/$round.b" 2>&1 & two=$!
    wait $one || a=$?
    wait $two || b=$?
    count tried
    case $a$b in
      00) ;;
      03) count refused; told "$round" "$shop/$round.b" "another run is at work here (process " ;;
      30) count refused; told "$round" "$shop/$round.a" "another run is at work here (process " ;;
      *) broken "$round" "the two ended with $a and $b" "$shop/$round.a" ;;
    esac
    diff -r "$shop/new-site" "$site" >/dev/null || broken "$round" "two runs made another site than one"
    whole "$round" "$site"
    finishes "$round" "$site"
    rm -rf "${shop:?}/$round"
  done
}

# While a run is held up at its first move another is refused, by name; killed, it is in nobody's way.
held_by_another() {
  local site held pid code=0 round=together-held
  site=$(stand "$round" old)
  count tried
  { strace -f -qq -o /dev/null -P "$shop/$round/.ribband/staging/pages/1" -e "trace=$moves" -e signal=none \
    -e "inject=$moves:delay_enter=20000000" "${java[@]}" publish "$shop/new" -o "$site" >/dev/null 2>&1 & } 2>/dev/null
  held=$!
  for ((i = 0; i < 300; i++)); do
    cmp -s "$shop/stand/site/site-files.txt" "$site/site-files.txt" || break
    sleep 0.1
  done
  pid=$(tr -dc 0-9 <"$shop/$round/.ribband/lock")
  "$ribband" publish "$shop/new" -o "$site" >"$shop/$round.out" 2>"$shop/$round.err" || code=$?
  [ $code = 3 ] || broken "$round" "beside a run at work it ended with $code" "$shop/$round.err"
  count refused
  told "$round" "$shop/$round.err" "another run is at work here (process $pid) and holds $shop/$round/.ribband/lock; let it end, then run again"
  whole "$round" "$site"
  kill -KILL "$pid" && count killed
  wait $held 2>/dev/null
  finishes "$round" "$site"
}
