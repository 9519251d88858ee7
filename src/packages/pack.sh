#!/bin/sh
# Packs the image: a tar.gz, and on Debian and Ubuntu a package. Times, owners and order do not depend on who packs
# and when; only the archive of classes, which Java makes, is another each time.
# Usage: pack.sh IMAGE VERSION MOMENT; what it makes lies beside the image.
set -eu
image=$1
version=$2
moment=$3
here=$(cd "$(dirname "$0")" && pwd)
packages=$(dirname "$image")
export LC_ALL=C TZ=UTC

# settled FOLDER: rights and times that do not depend on who builds, and when
settled() {
  chmod -R u=rwX,go=rX "$1"
  find "$1" -exec touch -h -d "$moment" {} +
}

chmod +x "$image/bin/ribband"
settled "$image"
# Last, as an archive of classes names the time of what they were read from.
sh "$here/../main/app/class-data.sh" none "$image"
[ -f "$image/lib/ribband.jsa" ] || { echo "pack: the archive of classes was not made" >&2; exit 1; }
settled "$image"

case $(uname -s) in
  Darwin) system=macos root="--uid 0 --gid 0" ;;
  *) system=linux root="--owner=0 --group=0 --numeric-owner" ;;
esac
archive=ribband-$version-$system-$(uname -m).tar.gz
cd "$packages"
find "$(basename "$image")" | sort | tar --format=ustar $root --no-recursion -cf - -T - | gzip -n >"$archive"
made=$archive

if command -v dpkg-deb >/dev/null && command -v dpkg-shlibdeps >/dev/null; then
  package=ribband_${version}_$(dpkg --print-architecture).deb
  sh "$here/debian.sh" "$image" "$version" "$moment" "$packages/$package"
  made="$made $package"
elif [ $system = linux ]; then
  echo "pack: no Debian package; it takes Debian or Ubuntu and their package dpkg-dev"
fi
for file in $made; do
  { sha256sum "$file" 2>/dev/null || shasum -a 256 "$file"; } >"$file.sha256"
done
