# Two pictures in a folder that the builder named.

# carded ROUND FOLDER: each card is the old one or the new one to the byte, or not there where it never was; the
# next run makes the new ones and leaves nothing beside them.
carded() {
  local code=0 card
  for card in card frame; do
    card=siskin-2026-03-$card.png
    if [ -e "$2/$card" ] && ! cmp -s "$2/$card" "$shop/cards-old/$card" && ! cmp -s "$2/$card" "$shop/cards-new/$card"; then
      broken "$1" "$card is neither the old nor the new one"
    fi
  done
  count whole
  "$ribband" recap -q 2026-03 "$shop/new" --card --into "$2" >/dev/null 2>"$shop/next-$1" || code=$?
  if [ $code != 0 ] || ! diff -r "$2" "$shop/cards-new" >/dev/null; then
    broken "$1" "the next run ended with $code and other files" "$shop/next-$1"
  else
    count finished
  fi
}
# dealt CALL FAULT WHEN OLD: two cards drawn, over old ones or none, while a call goes wrong.
dealt() {
  local round=cards-$1-${2//[^A-Z]/}-$3-$4 code=0 folder
  folder=$shop/$round/cards
  mkdir -p "$folder"
  [ "$4" = none ] || cp "$shop/cards-old"/* "$folder"
  count tried
  {
    strace -f -qq -e signal=none -o "$shop/$round.calls" -e "trace=$1" -e "inject=$1:$2:when=$3" \
      "${java[@]}" recap 2026-03 "$shop/new" --card --into "$folder" >"$shop/$round.out" 2>"$shop/$round.err" || code=$?
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
      [ ! -s "$shop/$round.out" ] || broken "$round" "it told what it had not done" "$shop/$round.out"
      told "$round" "$shop/$round.err" "cannot write $folder/siskin-2026-03-card.png: Input/output error"
      [ -z "$(ls -A "$folder" | grep -v '^siskin-2026-03-[a-z]*.png$')" ] || broken "$round" "more than cards was left"
      ;;
  esac
  carded "$round" "$folder"
}
group_cards() { # two pictures in a folder that the builder named
  local when old code=0 folder=$shop/disk-cards/cards
  mkdir "$shop/cards-old" "$shop/cards-new"
  "$ribband" recap -q 2026-03 "$shop/old" --card --into "$shop/cards-old" >/dev/null || broken cards "no cards"
  "$ribband" recap -q 2026-03 "$shop/new" --card --into "$shop/cards-new" >/dev/null || broken cards "no cards"
  cmp -s "$shop"/cards-*/siskin-2026-03-card.png && broken cards "the two cards are one"
  reads cards-reading "$shop" "$shop/new" '' "$ribband" recap 2026-03 "$shop/new" --card --into "$shop/reading"
  for old in none old; do
    for when in 1 2; do
      dealt "$moves" signal=KILL $when $old
      dealt "$flushes" signal=KILL $when $old
    done
    dealt "$moves" error=EIO 1+ $old
    dealt "$flushes" error=EIO 1+ $old
  done
  # A disk that is full to the last byte.
  mkdir "$shop/disk-cards"
  mount -t tmpfs -o size=8m tmpfs "$shop/disk-cards" || { broken cards "no small disk can be mounted here"; return; }
  mkdir "$folder"
  cp "$shop/cards-old"/* "$folder"
  cat /dev/zero >"$shop/disk-cards/filler" 2>/dev/null
  count tried
  "$ribband" recap 2026-03 "$shop/new" --card --into "$folder" >"$shop/$group-full.out" 2>"$shop/$group-full.err" || code=$?
  [ $code = 3 ] || broken cards-full "ended with $code" "$shop/$group-full.err"
  count refused
  told cards-full "$shop/$group-full.err" "cannot write $folder/siskin-2026-03-card.png: No space left on device"
  diff -r "$folder" "$shop/cards-old" >/dev/null || broken cards-full "the old cards are gone"
  rm "$shop/disk-cards/filler"
  carded cards-full "$folder"
  umount "$shop/disk-cards"
}
