# A calendar in a file that the builder named.

# calendared ROUND FILE: a calendar is the old one or the new one to the byte; the next run makes the new one
# and leaves nothing beside it.
calendared() {
  local code=0
  if cmp -s "$2" "$shop/glued-old.ics" || cmp -s "$2" "$shop/glued-new.ics"; then
    count whole
  else
    broken "$1" "the calendar is neither the old nor the new one"
  fi
  "$ribband" joints -q "$shop/glued" "${later[@]}" --calendar "$2" >/dev/null 2>"$shop/next-$1" || code=$?
  if [ $code != 0 ] || ! cmp -s "$2" "$shop/glued-new.ics"; then
    broken "$1" "the next run ended with $code and another calendar" "$shop/next-$1"
  elif [ "$(ls -A "$(dirname "$2")")" != joints.ics ]; then
    broken "$1" "the next run left more than the calendar"
  else
    count finished
  fi
}
# spoilt CALL FAULT WHEN: the old calendar written over while a call goes wrong.
spoilt() {
  local round=calendar-$1-${2//[^A-Z]/}-$3 code=0 file
  file=$shop/$round/joints.ics
  mkdir "$shop/$round"
  cp "$shop/glued-old.ics" "$file"
  count tried
  {
    strace -f -qq -e signal=none -o "$shop/$round.calls" -e "trace=$1" -e "inject=$1:$2:when=$3" \
      "${java[@]}" joints "$shop/glued" "${later[@]}" --calendar "$file" >"$shop/$round.out" 2>"$shop/$round.err" || code=$?
  } 2>/dev/null
  [ $code = 137 ] || grep -q INJECTED "$shop/$round.calls" || broken "$round" "the call was never made" "$shop/$round.err"
  case $2 in
    *KILL*)
      count killed
      [ $code = 137 ] || broken "$round" "it was to be killed and ended with $code"
      ;;
    *)
      count refused
      [ $code = 3 ] || broken "$round" "ended with $code" "$shop/$round.err"
      told "$round" "$shop/$round.err" "cannot write $file: Input/output error"
      [ "$(ls -A "$shop/$round")" = joints.ics ] || broken "$round" "more than the calendar was left"
      ;;
  esac
  # Moved it is only by the rename itself.
  [ "$1" = "$moves" ] || [ "$3" != 1 ] || cmp -s "$file" "$shop/glued-old.ics" || broken "$round" "the old calendar is gone"
  calendared "$round" "$file"
}
group_calendar() { # a calendar in a file that the builder named
  local file=$shop/disk-calendar/joints.ics code=0 when
  local later=(--now '2026-03-14 23:00')
  mkdir "$shop/glued"
  cat >"$shop/glued/project.yaml" <<'YAML'
name: Siskin
adhesives: {epoxy: {soft for: 90 min, clamp time: 8 h}}
YAML
  printf -- '---\njoints:\n  - {name: Scarf, adhesive: epoxy, spread at: 20:25}\n---\n' >"$shop/glued/2026-03-14.md"
  "$ribband" joints -q "$shop/glued" --all --calendar "$shop/glued-old.ics" >/dev/null || broken calendar "no calendar"
  "$ribband" joints -q "$shop/glued" "${later[@]}" --calendar "$shop/glued-new.ics" >/dev/null || broken calendar "no calendar"
  ! cmp -s "$shop/glued-old.ics" "$shop/glued-new.ics" || broken calendar "the two calendars are one"
  reads calendar-reading "$shop" "$shop/glued" '' "$ribband" joints "$shop/glued" --all --calendar "$shop/reading/joints.ics"
  spoilt "$moves" signal=KILL 1
  spoilt "$moves" error=EIO 1+
  for when in 1 2; do spoilt "$flushes" signal=KILL $when; done
  spoilt "$flushes" error=EIO 1+
  # A disk that is full to the last byte.
  mkdir "$shop/disk-calendar"
  mount -t tmpfs -o size=64k tmpfs "$shop/disk-calendar" || { broken calendar "no small disk can be mounted here"; return; }
  cp "$shop/glued-old.ics" "$file"
  cat /dev/zero >"$shop/disk-calendar/filler" 2>/dev/null
  count tried
  "$ribband" joints "$shop/glued" "${later[@]}" --calendar "$file" >"$shop/$group-full.out" 2>"$shop/$group-full.err" || code=$?
  [ $code = 3 ] || broken calendar-full "ended with $code" "$shop/$group-full.err"
  count refused
  told calendar-full "$shop/$group-full.err" "cannot write $file: No space left on device"
  cmp -s "$file" "$shop/glued-old.ics" || broken calendar-full "the old calendar is gone"
  rm "$shop/disk-calendar/filler"
  calendared calendar-full "$file"
  umount "$shop/disk-calendar"
}
