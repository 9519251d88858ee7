#!/bin/sh
# Makes the class-data archive from which the start script's Java takes its classes ready-made.
# Usage: class-data.sh JAVA_HOME APP. Only a shortcut: without it, under another Java, or with the jar in
# another place, the start script works as well and a little slower; so a failure is no failure.
export JAVA_HOME="$1"
app=$2
work=$(mktemp -d) || exit 0
trap 'rm -rf "$work"' EXIT

# start OPTIONS [ARGUMENT...]: as the start script starts it, with more said to Java
start() {
  options=$1
  shift
  JDK_JAVA_OPTIONS=$options "$app/bin/ribband" "$@" >/dev/null 2>&1
}
note() {
  # The arguments are words without quotes.
  start "-XX:DumpLoadedClassList=classes-$1" $2
}

(
  cd "$work" || exit 0
  note 1 --version
  note 2 "lay boat"
  # With an address a site has cards and feeds, too.
  printf "site: {address: 'https://example.org/'}\n" >>boat/project.yaml
  note 3 "publish boat"
  note 4 "tally boat"
  note 5 "publish boat"
  note 6 "joints boat"
  note 7 "stock boat"
  note 8 "mix boat --area 3ft2 --ratio 2:1 --temperature 61F"
  note 9 "boards boat --board 6inx12ft --strip 1in --kerf 3mm"
  note 10 "ahead boat"
  note 11 "papers boat --into papers"
  note 12 "tonight boat"
  printf 'date,hours,phase,cost,note\n2024-05-04,2:45,planking,23.70,fitted\n' >past.csv
  note 13 "bring past.csv boat --write"
  note 14 "recap boat --card"
  cat classes-* | sort -u >classes
  start "-Xshare:dump -XX:SharedClassListFile=classes"
)
exit 0
