/**
 * For the Mac: the manifest copied into the folder where Excel looks for add-ins of its user, under a name
 * that is the add-in's own. After the maker's instructions; not tried in Excel.
 */
import type { AddIn } from "../../../xlsx";

const head = (what: string, { id }: AddIn): string => `#!/bin/bash
# ${what}
set -u
excel="$HOME/Library/Containers/com.microsoft.Excel"
wef="$excel/Data/Documents/wef"
mine="$wef/${id}.manifest.xml"
`;

export const installOnMac = (addIn: AddIn): string => `${head(
  "Makes Titrebook known to Excel, for this user alone.",
  addIn,
)}here="$(cd "$(dirname "$0")" && pwd)"
if [ ! -f "$here/manifest.xml" ]; then
  echo "manifest.xml is not beside this script: unpack the whole zip file first."
  exit 1
fi
if [ ! -d "$excel" ]; then
  echo "Excel has left no folder on this Mac yet: start it once, then run this again."
  exit 1
fi
if ! mkdir -p "$wef" || ! cp "$here/manifest.xml" "$mine"; then
  echo "It could not be written. If the Mac asked whether Terminal may reach other apps' data, allow it."
  exit 1
fi
echo "Done. Quit Excel if it is open, then open start.xlsx from this folder."
echo "remove-mac.sh takes it out again."
`;

export const removeFromMac = (addIn: AddIn): string => `${head(
  "Takes Titrebook out of Excel, for this user alone.",
  addIn,
)}if [ -e "$mine" ] && ! rm "$mine"; then
  echo "It could not be taken out. If the Mac asked whether Terminal may reach other apps' data, allow it."
  exit 1
fi
# only when nothing else is in it
[ -d "$wef" ] && rmdir "$wef" 2>/dev/null
echo "Titrebook is taken out. Quit Excel if it is open. Your workbooks keep their figures."
`;
