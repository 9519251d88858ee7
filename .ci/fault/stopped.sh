# A run stopped at any moment.

stopped_once() { # stopped_once ROUND SIGNAL MILLISECONDS OLD
  local round=$1 site run code=0
  site=$(stand "$round" "$4")
  "$ribband" publish "$shop/new" -o "$site" >"$shop/$round.out" 2>"$shop/$round.err" & run=$!
  sleep "$(printf '%d.%03d' $(($3 / 1000)) $(($3 % 1000)))"
  kill "-$2" $run 2>/dev/null
  wait $run 2>/dev/null || code=$?
  count tried
  case $code in
    0) ;;
    137 | 143) count killed ;;
    *) broken "$round" "a run that was stopped ended with $code" "$shop/$round.err" ;;
  esac
  [ ! -s "$shop/$round.err" ] || broken "$round" "it had something to say" "$shop/$round.err"
  whole "$round" "$site"
  finishes "$round" "$site"
  rm -rf "${shop:?}/$round"
}
group_stopped() { # killed, or asked to stop, at any moment
  local i took
  RANDOM=$seed
  took=$(date +%s%N)
  "$ribband" publish "$shop/new" -o "$(stand stopped-gauge old)" >/dev/null
  took=$((($(date +%s%N) - took) / 1000000))
  for i in $(seq 20); do
    slot
    stopped_once "stopped-$i" "$([ $((i % 3)) = 0 ] && echo TERM || echo KILL)" $((RANDOM % took)) \
      "$([ $((i % 5)) = 0 ] && echo none || echo old)" &
  done
  wait
  note="seed $seed"
}
