# Papers in a folder that the builder named.

# filed ROUND FOLDER: the papers are whole to the byte, or not there; the next run makes them and leaves
# nothing beside them. FOLDER lies alone in its own folder.
filed() {
  local code=0
  if [ ! -e "$2" ] || diff -r "$shop/filed" "$2" >"$shop/diff-$1"; then
    count whole
  else
    broken "$1" "the papers are half there" "$shop/diff-$1"
  fi
  # What is there whole stays so: papers are never written over.
  [ ! -e "$2" ] || mv "$2" "$shop/$1-first"
  "$ribband" papers -q "$shop/bought" --into "$2" >/dev/null 2>"$shop/next-$1" || code=$?
  if [ $code != 0 ] || ! diff -r "$shop/filed" "$2" >/dev/null; then
    broken "$1" "the next run ended with $code and other papers" "$shop/next-$1"
  elif [ "$(ls -A "$(dirname "$2")")" != papers ]; then
    broken "$1" "the next run left more than the papers"
  else
    count finished
  fi
  state "$shop/bought" | cmp -s - "$shop/bought.state" || broken "$1" "the journal is not as it was"
}
# misfiled CALL FAULT WHEN: papers written while a call goes wrong.
misfiled() {
  local round=papers-$1-${2//[^A-Z]/}-${3/+/on} code=0 into
  round=${round//,/-}
  into=$shop/$round/papers
  mkdir "$shop/$round"
  {
    strace -f -qq -e signal=none -o "$shop/$round.calls" -e "trace=$1" -e "inject=$1:$2:when=$3" \
      "${java[@]}" papers "$shop/bought" --into "$into" >"$shop/$round.out" 2>"$shop/$round.err" || code=$?
  } 2>/dev/null
  if [ $code != 137 ] && ! grep -q INJECTED "$shop/$round.calls"; then
    # Threads share the calls, and strace counts each thread for itself: the last of them was made before.
    [ "$3" != 1 ] && [ "$3" != 1+ ] || broken "$round" "the call was never made" "$shop/$round.err"
    rm -rf "${shop:?}/$round"
    return
  fi
  count tried
  case $2 in
    *KILL*)
      count killed
      [ $code = 137 ] || broken "$round" "it was to be killed and ended with $code"
      ;;
    *)
      count refused
      [ $code = 3 ] || broken "$round" "ended with $code" "$shop/$round.err"
      told "$round" "$shop/$round.err"
      [ -z "$(ls -A "$shop/$round")" ] || broken "$round" "something was left"
      ;;
  esac
  filed "$round" "$into"
}
group_papers() { # papers in a folder that the builder named
  local when into code=0
  cp -a "$shop/new" "$shop/bought"
  mkdir "$shop/bought/receipts"
  head -c 30000 "$here/journal" >"$shop/bought/receipts/0405.pdf"
  printf -- '---\nphase: planking\nmaterials: {bought: [{item: rivets, cost: 9.50, receipt: receipts/0405.pdf}]}\n---\n' \
    >"$shop/bought/2026-04-05-rivets.md"
  state "$shop/bought" >"$shop/bought.state"
  "$ribband" papers -q "$shop/bought" --into "$shop/filed" >/dev/null || { broken papers "no papers at all"; return; }
  reads papers-reading "$shop" "$shop/bought" '' "$ribband" papers "$shop/bought" --into "$shop/reading/papers"
  for when in $(turns 12); do
    slot
    misfiled "$moves" signal=KILL $when &
  done
  for when in $(turns 20); do
    slot
    misfiled "$flushes" signal=KILL $when &
  done
  for when in $(turns 4); do
    slot
    misfiled "$makings" signal=KILL $when &
  done
  wait
  misfiled "$moves" error=EIO 1+
  misfiled "$flushes" error=EIO 1+
  # A disk that is full before the first picture, or after some.
  for when in 64k 160k; do
    into=$shop/disk-papers-$when/papers code=0
    mkdir "$shop/disk-papers-$when"
    mount -t tmpfs -o "size=$when" tmpfs "$shop/disk-papers-$when" || { broken papers "no small disk can be mounted here"; return; }
    count tried
    "$ribband" papers "$shop/bought" --into "$into" >"$shop/$group-full.out" 2>"$shop/$group-full.err" || code=$?
    [ $code = 3 ] || broken "papers-full-$when" "ended with $code" "$shop/$group-full.err"
    count refused
    told "papers-full-$when" "$shop/$group-full.err" ": No space left on device"
    [ -z "$(ls -A "$shop/disk-papers-$when")" ] || broken "papers-full-$when" "something was left"
    mount -o remount,size=8m "$shop/disk-papers-$when"
    filed "papers-full-$when" "$into"
    umount "$shop/disk-papers-$when"
  done
  # A folder that nobody else may write into.
  mkdir -m 555 "$shop/papers-denied"
  code=0
  count tried
  setpriv --reuid=65534 --regid=65534 --clear-groups "$ribband" papers "$shop/bought" --into "$shop/papers-denied/papers" \
    >"$shop/$group-denied.out" 2>"$shop/$group-denied.err" || code=$?
  [ $code = 3 ] || broken papers-denied "ended with $code" "$shop/$group-denied.err"
  count refused
  told papers-denied "$shop/$group-denied.err" "cannot write $shop/papers-denied/papers: permission denied"
  chmod 755 "$shop/papers-denied"
  filed papers-denied "$shop/papers-denied/papers"
}
