#!/bin/sh
# Writes one small text file about this computer's memory into a folder.
#
#     sudo sh collect-linux.sh /mnt/share/firmware [NAME]
#
# What is written, and what is not, stands in README.txt beside this script. The file is named by NAME, else by the
# computer's serial number, else by its asset tag, else by its host name. An administrator's rights are needed, because
# Linux shows the table to nobody else.
set -eu

target=${1:?"Name the folder to write into: sh collect-linux.sh FOLDER [NAME]"}
name=${2:-}
table=${SLOTLEDGER_TABLE:-/sys/firmware/dmi/tables/DMI}
ids=${SLOTLEDGER_IDS:-/sys/class/dmi/id}

if [ ! -r "$table" ]; then
    echo "$0: $table can't be read. Run this as root; computers without SMBIOS have no such table." >&2
    exit 1
fi

# What firmware leaves in fields that nobody filled in is no name.
usable() {
    case $(printf '%s' "$1" | tr 'A-Z' 'a-z') in
        '' | none | default* | *o.e.m* | *serial* | *asset* | unknown | 'not '* | 0 | 0000* | n/a | ' ') return 1 ;;
    esac
}
for file in product_serial chassis_serial chassis_asset_tag board_asset_tag; do
    if [ -z "$name" ] && [ -r "$ids/$file" ]; then
        value=$(tr -d '\r\n' < "$ids/$file")
        if usable "$value"; then name=$value; fi
    fi
done
[ -n "$name" ] || name=$(uname -n)
name=$(printf '%s' "$name" | tr -c 'A-Za-z0-9._-' '_')

mkdir -p "$target"
part="$target/.$name.part"
# Only structures about the system, its board, chassis, processors and memory are kept: types 1 to 6, 16, 17, 19, 20
# and the end, 127. A structure is its length in the second byte, then texts up to two zero bytes.
{
    echo "# Memory table of one computer: SMBIOS structures of types 1-6, 16, 17, 19, 20, as hexadecimal bytes."
    od -An -v -tx1 "$table" | awk '
        { for (i = 1; i <= NF; i++) byte[n++] = $i }
        function number(hex) {
            return (index("0123456789abcdef", substr(hex, 1, 1)) - 1) * 16 \
                + index("0123456789abcdef", substr(hex, 2, 1)) - 1
        }
        END {
            at = 0
            while (at + 4 <= n) {
                type = number(byte[at]); end = at + number(byte[at + 1])
                if (end < at + 4 || end + 2 > n) break
                while (end + 1 < n && !(byte[end] == "00" && byte[end + 1] == "00")) end++
                end += 2
                if (type >= 1 && type <= 6 || type == 16 || type == 17 || type == 19 || type == 20 || type == 127) {
                    line = ""
                    for (i = at; i < end; i++) line = line byte[i] " "
                    print line
                }
                if (type == 127) break
                at = end
            }
        }'
} > "$part"
mv -f "$part" "$target/$name.txt"
echo "$target/$name.txt"
