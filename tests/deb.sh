#!/bin/bash
# Installs the Debian package in a clean system and uses it there as a person would: `make deb-test`.
#
# The system is made new, below a folder of its own, with nothing in it but what Debian calls essential and apt; apt alone
# decides what the package needs. The window is drawn on a display outside and read through WebKit's driver. As root only:
# a system below a folder is entered by chroot.
# usage: tests/deb.sh PACKAGE.deb [PICTURE.png]      the picture shows the first screen
set -euo pipefail
# What is mounted below goes with this script, whatever ends it.
[ -n "${MENDLINE_APART:-}" ] || MENDLINE_APART=yes exec unshare --mount --propagation private "$0" "$@"
package=$(realpath "$1") picture=$(realpath -m "${2:-out/deb-window.png}")
cd "$(dirname "$0")/.."
suite=$(. /etc/os-release && echo "$VERSION_CODENAME")
outside=$(mktemp -d)
root=$outside/root
trap 'for place in dev proc; do ! mountpoint --quiet "$root/$place" || umount "$root/$place"; done; rm -r --one-file-system "$outside"' EXIT

fail() { echo "tests/deb.sh: $*" >&2; exit 1; }
inside() { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 HOME=/root DEBIAN_FRONTEND=noninteractive "$@"; }

lintian --fail-on error --tag-display-limit 0 "$package"

mmdebstrap --variant=minbase --quiet "$suite" "$root" < /dev/null
mount --bind /proc "$root/proc"
mount --bind /dev "$root/dev"
inside apt-get update --quiet=2

name=$(dpkg-deb --field "$package" Package)
cp "$package" "$root/tmp/$name.deb"
inside apt-get install --yes --quiet=2 --no-install-recommends "/tmp/$name.deb" > "$outside/apt.log" 2>&1 || { cat "$outside/apt.log"; fail "apt does not install it"; }
inside dpkg-query --listfiles "$name" | while read -r path; do [ -d "$root$path" ] || echo "$path"; done > "$outside/files"

for entry in $(grep '/applications/.*\.desktop$' "$outside/files"); do
  desktop-file-validate "$root$entry"
  icon=$(sed -n 's/^Icon=//p' "$root$entry") starts=$(sed -n 's/^Exec=\([^ ]*\).*/\1/p' "$root$entry")
  grep --quiet "/icons/.*/$icon\.png$" "$outside/files" || fail "no icon $icon"
  inside which "$starts" > /dev/null || fail "the entry of the menu starts $starts, which is not there"
done
[ -n "${starts:-}" ] || fail "no entry for the menu"
for owner in "Apache License" "DejaVu Sans Condensed" "SIL OPEN FONT LICENSE" "rusqlite"; do
  grep --quiet "$owner" "$root/usr/share/doc/$name/copyright" || fail "the copyright file does not name $owner"
done

[ "$(inside mendline --version)" = "mendline $(dpkg-deb --field "$package" Version)" ] || fail "the version is not the package's"
inside mendline --help | grep --quiet verify || fail "no help"
inside mendline demo --out /tmp/demo > /dev/null
status=0; inside mendline verify /tmp/demo/certificate.pdf > "$outside/verify" || status=$?
[ "$status" = 3 ] || { cat "$outside/verify"; fail "verify calls the rehearsal $status, not 3"; }

# The driver starts what is called mendline-app in this folder, and outside lends it the display and its own settings.
mkdir "$outside/bin"
cat > "$outside/bin/$starts" <<STARTS
#!/bin/sh
unset MENDLINE_DATA XAUTHORITY
HOME=/root exec chroot "$root" "$starts"
STARTS
chmod +x "$outside/bin/$starts"
mkdir -p "$(dirname "$picture")"
MENDLINE_BUILT=$outside/bin xvfb-run --auto-servernum --server-args="-screen 0 1280x1024x24 -ac" node tests/ui/installed.mjs "$picture"
home=$root/root
data=$home/.local/share/mendline
[ -f "$data/journal.sqlite" ] || fail "no journal in $data: $(find "$home" -newer "$outside/files" | head)"

# What somebody has recorded stays when the program goes; all else goes with it.
inside apt-get remove --yes --quiet=2 "$name" > /dev/null 2>&1
while read -r path; do [ ! -e "$root$path" ] || fail "left behind: $path"; done < "$outside/files"
! inside dpkg-query --show "$name" > /dev/null 2>&1 || fail "dpkg still knows the package"
[ -f "$data/journal.sqlite" ] || fail "the journal went with the program"
echo "$name: $(stat --format=%s "$package") bytes, $(dpkg-deb --field "$package" Installed-Size) kB installed; installed, used and removed on $suite"
