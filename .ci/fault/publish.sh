# A run that publishes, broken at one call after the other: killed, or told that the disk is full or failed.

stand() { # stand ROUND old|none: a place with the old site in it, or none; gives the site's path
  mkdir -p "$shop/$1"
  [ "$2" = none ] || cp -a "$shop/stand/." "$shop/$1/"
  echo "$shop/$1/site"
}

# injected ROUND OLD CALL FAULT PATH N: a publish in which one call goes wrong, the N-th of its thread with
# that path (*: with any). strace counts each thread for itself, so it is the paths that tell calls apart.
injected() {
  local round=$1 old=$2 call=$3 fault=$4 path=$5 n=$6 place=$shop/$1 site code=0 words=
  local only=(-P "$place/$path") list=/dev/null
  [ "$path" != '*' ] || only=()
  [ "$path" != . ] || only=(-P "$place")
  site=$(stand "$round" "$old")
  {
    strace -f -qq -e signal=none -o "$place.calls" "${only[@]}" -e "trace=$call" \
      -e "inject=$call:$fault:when=$n" "${java[@]}" publish "$shop/new" -o "$site" \
      >"$place.out" 2>"$place.err" || code=$?
  } 2>/dev/null # the shell's own word about a killed child
  if [ $code != 137 ] && ! grep -q INJECTED "$place.calls"; then
    # Which thread makes which print is the scheduler's choice.
    [ "$path" = '*' ] || broken "$round" "$call $n of $path was never made" "$place.err"
    rm -rf "${place:?}"
    return
  fi
  count tried
  case $fault in
    *KILL*)
      count killed
      [ $code = 137 ] || broken "$round" "it was to be killed and ended with $code"
      ;;
    *)
      case $fault in *ENOSPC) words=': No space left on device' ;; *) words=': Input/output error' ;; esac
      case $code in
        0)
          # What is remembered is only a shortcut, and some disks bring no folders down.
          case $path in
            . | .ribband/*.new) ;;
            *) broken "$round" "a fault at $path was passed over" ;;
          esac
          diff -r "$shop/new-site" "$site" >/dev/null || broken "$round" "it said done and was not" "$place.err"
          ;;
        3)
          count refused
          told "$round" "$place.err" "$words"
          grep -qF -- "$place/" "$place.err" || broken "$round" "this names no file" "$place.err"
          ;;
        *) broken "$round" "ended with $code" "$place.err" ;;
      esac
      ;;
  esac
  [ "$old" = none ] || list=$shop/stand/site/site-files.txt
  # The joint list is the first to come: as long as it has not, nothing may have.
  if [ ! -e "$site/site-files.txt" ] || cmp -s "$list" "$site/site-files.txt"; then
    if [ "$old" = old ]; then untouched "$round" "$site"; else untouched "$round" "$site" /dev/null; fi
  fi
  whole "$round" "$site"
  finishes "$round" "$site"
  rm -rf "${place:?}"
}

# turns N: the first two numbers up to N and each other of the rest, the even ones one day, the odd ones the next.
turns() { seq "$1" | awk -v turn="$seed" -v each="${FAULTS_EACH-}" 'each != "" || NR < 3 || (NR + turn) % 2 == 0'; }

slot() { while [ "$(jobs -rp | wc -l)" -ge "$(nproc)" ]; do wait -n; done; }

# traced ROUND OLD CALLS: a publish that nothing happens to, its calls written down; gives the site's path.
traced() {
  local site
  site=$(stand "$1" "$2")
  strace -f -qq -y -s 0 -e signal=none -o "$shop/$1.calls" -e "trace=$3" \
    "${java[@]}" publish "$shop/new" -o "$site" >"$shop/$1.out" 2>&1 || broken "$1" "cannot publish" "$shop/$1.out"
  echo "$site"
}
# every OLD CALLS FAULT [+]: one call after the other goes wrong, of all that a run makes in its folders, those
# alike by turns; with a plus all that come after it with the same path too, as Java tries some things twice.
every() {
  local n=0 call path which site round=$group-$1-${3//[^A-Z]/}
  site=$(traced "$round" "$1" "$2")
  python3 "$here/trace.py" calls "$shop/$round.calls" "$(dirname "$site")" "$2" "$([ -n "${FAULTS_EACH-}" ] || echo "$seed")" >"$shop/$round.plan"
  [ "$(wc -l <"$shop/$round.plan")" -gt 15 ] || broken "$round" "hardly a call was seen" "$shop/$round.plan"
  while IFS=$'\t' read -r call path which; do
    slot
    n=$((n + 1))
    [ "$path" = '*' ] || which=$which${4-} # else it would take away what the run says, too
    injected "$round-$n" "$1" "$call" "$3" "$path" "$which" &
  done <"$shop/$round.plan"
  wait
}

flushes=fsync,fdatasync
moves=rename,renameat,renameat2
removals=unlink,unlinkat,rmdir
makings=mkdir,mkdirat
fills=write,pwrite64,writev,$moves,$makings
opens=open,openat,openat2,creat
group_update() { every old $moves,$removals signal=KILL; }
group_first() { every none $moves signal=KILL; }
group_flush() {
  every old $flushes error=EIO +
  every old $flushes signal=KILL
}
group_full() { every old $fills error=ENOSPC +; }

group_order() { # no fault: what a power cut would find, read off the calls of a run that was left alone
  local old site before
  for old in old none; do
    count tried
    site=$(traced "order-$old" $old "$flushes,$moves,$removals,$makings,$opens,write,pwrite64,writev,pwritev,ftruncate,sendfile,copy_file_range")
    python3 "$here/trace.py" order "$shop/order-$old.calls" "$site" >"$shop/order-$old.odd" ||
      broken "order-$old" "not in the order promised" "$shop/order-$old.odd"
    before=$shop/stand/site
    [ $old = old ] || before=/dev/null
    python3 "$here/trace.py" steps "$shop/order-$old.calls" "$site" "$before" "$shop/order-$old-steps" >"$shop/order-$old.odd" ||
      broken "order-$old" "dead links between two steps" "$shop/order-$old.odd"
    whole "order-$old" "$site"
    finishes "order-$old" "$site"
  done
}
