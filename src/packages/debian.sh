#!/bin/sh
# Makes a Debian package of the image. No script of it runs when it is installed or removed.
# Usage: debian.sh IMAGE VERSION MOMENT PACKAGE
set -eu
image=$1
version=$2
moment=$3
package=$4
here=$(cd "$(dirname "$0")" && pwd)
tree=$(mktemp -d)
trap 'rm -rf "$tree"' EXIT
chmod 755 "$tree"
export SOURCE_DATE_EPOCH="$(date -u -d "$moment" +%s)"

mkdir -p "$tree/usr/bin" "$tree/usr/lib/ribband" "$tree/usr/share/doc/ribband" "$tree/usr/share/lintian/overrides" "$tree/DEBIAN"
cp -a "$image/bin" "$image/lib" "$image/java" "$tree/usr/lib/ribband/"
ln -s ../lib/ribband/bin/ribband "$tree/usr/bin/ribband"
cp -a "$image/share/." "$tree/usr/share/"
# Shells read it, and nothing runs it.
sed -i '1{/^#!/d}' "$tree/usr/share/bash-completion/completions/ribband"
gzip -9n "$tree/usr/share/man/man1/ribband.1"
doc=$tree/usr/share/doc/ribband
cp "$here/debian/copyright" "$doc/"
cp -a "$image/licences" "$doc/"
[ ! -f "$image/ribband.cdx.json" ] || cp "$image/ribband.cdx.json" "$doc/"
cp "$here/debian/lintian-overrides" "$tree/usr/share/lintian/overrides/ribband"
{
  printf 'ribband (%s) stable; urgency=medium\n\n  * Made from the source of this version.\n\n' "$version"
  printf ' -- %s  %s\n' "$(cat "$here/debian/maintainer")" "$(date -u -R -d "$moment")"
} | gzip -9n >"$doc/changelog.gz"

# What the Java inside wants of the system is read from its files; its own libraries are its own.
java=$tree/usr/lib/ribband/java
binaries=$(find "$java/bin" "$java/lib" -type f \( -path '*/bin/*' -o -name '*.so' -o -name jexec -o -name jspawnhelper \) | sort)
strip --strip-unneeded $binaries
needs=$(
  mkdir -p "$tree/debian"
  printf 'Source: ribband\n\nPackage: ribband\nArchitecture: any\n' >"$tree/debian/control"
  cd "$tree"
  dpkg-shlibdeps -O --warnings=0 -l"$java/lib" -l"$java/lib/server" $binaries | sed 's/^shlibs:Depends=//'
)
rm -r "$tree/debian"
sed -e "s/@VERSION@/$version/" -e "s/@MAINTAINER@/$(cat "$here/debian/maintainer")/" \
  -e "s/@ARCHITECTURE@/$(dpkg --print-architecture)/" -e "s/@NEEDS@/$needs/" \
  -e "s/@SIZE@/$(du -sk --apparent-size "$tree/usr" | cut -f1)/" "$here/debian/control" >"$tree/DEBIAN/control"
(cd "$tree" && find usr -type f | LC_ALL=C sort | xargs -d '\n' md5sum >DEBIAN/md5sums)
chmod -R u=rwX,go=rX "$tree"
dpkg-deb --root-owner-group -Zxz -z1 --build "$tree" "$package" >/dev/null
