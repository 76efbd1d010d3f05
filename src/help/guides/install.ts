/**
 * How the add-in is loaded into the spreadsheet program, and taken out again. After the maker's
 * published instructions; not tried in the program.
 */
import { block, type Guide, heading, type Part, points, steps, text } from "./guide";

const installParts: readonly Part[] = [
  text(
    "You need one file, `manifest.xml`: from whoever hosts Titrebook for you, or, on the machine of a developer, from this project. The steps follow the maker's published instructions; names of menus differ a little between versions.",
  ),
  heading("Excel on Windows"),
  steps(
    "Make a folder, for example `C:\\Titrebook`, put `manifest.xml` into it, and share it: right-click, _Properties_, _Sharing_, _Share_, with yourself. Note the network path that is shown, such as `\\\\MYPC\\Titrebook`.",
    "In Excel: _File_, _Options_, _Trust Center_, _Trust Center Settings_, _Trusted Add-in Catalogs_. Paste the network path as _Catalog Url_, _Add catalog_, tick _Show in Menu_, _OK_ twice, and start Excel again.",
    "_Home_ (or _Insert_), _Add-ins_, _More Add-ins_ or _My Add-ins_, _SHARED FOLDER_: choose Titrebook, _Add_.",
    "_Open Titrebook_ is now on the _Home_ tab, and `=TITRE.` in a cell lists the functions.",
  ),
  text(
    "To take it out: remove `manifest.xml` from the folder and the catalogue from the list; close Excel; delete what is in `%LOCALAPPDATA%\\Microsoft\\Office\\16.0\\Wef\\` (this takes out every add-in that was loaded in this way).",
  ),
  heading("Excel on the Mac"),
  steps(
    "In the Finder press Command+Shift+G and go to `~/Library/Containers/com.microsoft.Excel/Data/Documents`. Make a folder `wef` there if there is none.",
    "Copy `manifest.xml` into `wef`, and start Excel again.",
    "_Home_ (or _Insert_), the small arrow beside _Add-ins_ or _My Add-ins_: Titrebook stands under _Developer Add-ins_.",
  ),
  text(
    "To take it out: delete the file from `wef`, quit Excel, and empty `~/Library/Containers/com.microsoft.Excel/Data/Library/Caches`.",
  ),
  heading("Excel on the web"),
  steps(
    "Open a workbook. _Home_ (or _Insert_), _Add-ins_, _More Add-ins_, _My Add-ins_, _Manage My Add-ins_, _Upload My Add-in_.",
    "Choose `manifest.xml`, _Upload_. It is kept by this browser alone.",
  ),
  text(
    "To take it out: in the same list, the three dots beside Titrebook, _Remove_; or clear this browser's data for the spreadsheet's site.",
  ),
  heading("A whole organisation"),
  text(
    "Whoever looks after the accounts uploads `manifest.xml` once, in the administration centre, under integrated apps; it then appears for everybody.",
  ),
  heading("When something is stale"),
  points(
    "The program keeps the list of functions for up to a day, apart from their code. Both ways round work: an old list with new code, and a new list with old code.",
    'To hurry it along: close the program, clear its cache as under "To take it out", load the manifest again.',
    "Cells that show #NAME? after that: open the pane and press _Ask again_.",
  ),
  heading("Where it runs"),
  text(
    "Excel for Microsoft 365 or 2024 on Windows and Mac, and Excel on the web. Phones, tablets and Excel 2019 or older do not run functions of add-ins; of 2021 its maker's pages say both yes and no.",
  ),
];

/** For the machine on which it is developed. */
const developerParts: readonly Part[] = [
  heading("From this project"),
  block("npm ci", "npm run certs", "npm run doctor", "npm run serve:excel"),
  points(
    "`npm run certs` makes certificates for https in `.certs/` and asks Windows or the Mac to trust them, for your account alone. On other systems it says what to do in a browser. `npm run certs -- --forget` takes trust and files away.",
    "`npm run serve:excel` serves the add-in on this machine, where `manifest.xml` points, and builds it again whenever a file changes. It serves without trust as well, and says so; Excel itself shows nothing until the certificate is trusted.",
    "`npm run doctor` looks at Node, packages, certificates, ports, the manifest and the build, and says what to mend.",
  ),
];

export const install: Guide = {
  file: "install.html",
  title: "Loading it into Excel",
  lead: "One file, loaded once on each machine, on Windows, the Mac or the web; and how to take it out again.",
  parts: [...installParts, ...developerParts],
};
