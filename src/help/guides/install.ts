/**
 * How the add-in is loaded into the spreadsheet program, and taken out again. After the maker's
 * published instructions; not tried in the program.
 */
import { block, type Guide, heading, type Part, points, steps, text } from "./guide";

const installParts: readonly Part[] = [
  text(
    "Get [titrebook.zip](../install/titrebook.zip) from whoever hosts Titrebook for you, or, where it is developed, from `dist/install`, and unpack it (right-click, _Extract All_). It holds one small file that Excel has to know, `manifest.xml`, and scripts that put it in its place. The steps follow the maker's published instructions and tools; **none of them has been tried in Excel yet**.",
  ),
  heading("Excel on Windows"),
  steps(
    "Double-click `install-windows.cmd`. Windows may warn of a file from the internet: _More info_, _Run anyway_. It copies `manifest.xml` into a folder of your own and writes one value under your own registry key (`HKCU\\Software\\Microsoft\\Office\\16.0\\Wef\\Developer`); no administrator is needed.",
    "Close Excel if it is open, and open `start.xlsx` from the same folder; press _Enable Editing_ where Excel offers it. The pane opens beside it, and its question is answered with 1.2903.",
    "_Open Titrebook_ is now on the _Home_ tab, and `=TITRE.` in a cell lists the functions.",
  ),
  text(
    "To take it out: double-click `remove-windows.cmd` and start Excel again. If it still stands there, close Excel and delete what is in `%LOCALAPPDATA%\\Microsoft\\Office\\16.0\\Wef\\`: this forgets every add-in that was loaded by hand.",
  ),
  heading("Excel on the Mac"),
  steps(
    "Open _Terminal_, type `bash` and a space, drag `install-mac.sh` from the Finder into its window, and press Enter. If the Mac asks whether Terminal may reach data of other apps, allow it: the script copies `manifest.xml` into Excel's own folder `wef`.",
    "Quit Excel if it is open, and open `start.xlsx` from the same folder. No pane? _Home_, _Add-ins_: Titrebook stands under _Developer Add-ins_. Each time Excel is started it is opened once in one of these ways.",
  ),
  text(
    "To take it out: the same with `remove-mac.sh`, and start Excel again. If it still stands there, quit Excel and empty `~/Library/Containers/com.Microsoft.OsfWebHost/Data`, then `~/Library/Containers/com.microsoft.Excel/Data/Library/Caches`.",
  ),
  heading("Excel on the web"),
  steps(
    "Open a workbook. _Home_, _Add-ins_, _More Settings_, _Upload My Add-in_.",
    "Choose `manifest.xml`, _Upload_. It is kept by this browser alone.",
  ),
  text(
    "To take it out: in the list of your add-ins, the three dots beside Titrebook, _Remove_; or clear this browser's data for the spreadsheet's site.",
  ),
  heading("A network share, for trying only"),
  text(
    "Excel on Windows also loads `manifest.xml` from a share that is listed under _File_, _Options_, _Trust Center_, _Trust Center Settings_, _Trusted Add-in Catalogs_ (tick _Show in Menu_); it then stands under _Home_, _Add-ins_, _Advanced_, _SHARED FOLDER_. Its maker means shares for trying an add-in, not for working with it: use the script above, or the way below for many people.",
  ),
  heading("A whole organisation"),
  text(
    "Whoever looks after the accounts uploads `manifest.xml` once, in the administration centre, under integrated apps; it then appears for everybody.",
  ),
  heading("Is it all right in this Excel?"),
  text(
    "In an empty workbook, at the bottom of the pane's first view: _Check this Excel_. It tries by itself what nobody has tried in your version, asks you to press Undo once, and writes one sheet of what it saw: versions and results, nothing of yours. Save that workbook and send it to whoever looks after Titrebook.",
  ),
  heading("When something is stale"),
  points(
    "The program keeps the list of functions for up to a day, apart from their code. Both ways round work: an old list with new code, and a new list with old code.",
    'To hurry it along: close the program, clear its cache as under "To take it out", install it again.',
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
  lead: "One script on each machine, on Windows or the Mac, or one file on the web; and how to take it out again.",
  parts: [...installParts, ...developerParts],
};
