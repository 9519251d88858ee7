# A small disk.

group_tmpfs() { # a small disk: the old site and so many KB more, or so many KB and nothing else
  local old more
  for more in 8 40 100 160 220 300; do slot; small_disk old $(($(du -sk "$shop/stand" | cut -f1) + more)) & done
  for more in 60 200 300 400 1500; do slot; small_disk none $more & done
  wait
  [ "$(grep -cx refused "$shop/done/$group")" -ge 5 ] || broken tmpfs "hardly a disk was too small"
}
small_disk() { # small_disk OLD KB
  local round=disk-$1-$2 old=$1 site code=0
  site=$shop/$round/site
  mkdir "$shop/$round"
  mount -t tmpfs -o "size=$2k" tmpfs "$shop/$round" || { broken "$round" "no small disk can be mounted here"; return; }
  if [ "$old" = old ]; then cp -a "$shop/stand/." "$shop/$round/" || broken "$round" "no room for the old site"; fi
  [ ! -d "$site" ] || state "$site" >"$shop/$round.stood"
  count tried
  "$ribband" publish "$shop/new" -o "$site" >"$shop/$round.out" 2>"$shop/$round.err" || code=$?
  case $code in
    0) ;;
    3)
      count refused
      told "$round" "$shop/$round.err" ": No space left on device"
      if [ "$old" = old ]; then untouched "$round" "$site" "$shop/$round.stood"; else untouched "$round" "$site" /dev/null; fi
      [ ! -e "$shop/$round/.ribband/staging" ] || broken "$round" "staging was not removed"
      ;;
    *) broken "$round" "ended with $code" "$shop/$round.err" ;;
  esac
  whole "$round" "$site"
  mount -o remount,size=8m "$shop/$round"
  finishes "$round" "$site"
  umount "$shop/$round"
}
