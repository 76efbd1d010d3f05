// What stands between the spreadsheet and functions.js. Names that end with _ are private there:
// no cell can call them.

/** What a cell hands over, as functions.js reads it: an error arrives as its text, a day as a date. */
function titreCell_(given) {
  if (Array.isArray(given)) return given.map(titreCell_);
  if (Object.prototype.toString.call(given) === "[object Date]") return titreDays_(given);
  if (
    typeof given === "string" &&
    /^#(N\/A|(VALUE|REF|NUM|DIV\/0|NULL|ERROR)!|NAME\?)$/.test(given)
  ) {
    return { type: "Error", basicValue: given };
  }
  return given;
}

/** Days as cells count them. A date is handed over as the moment at which that day began there. */
function titreDays_(date) {
  const moment = Date.UTC(
    date.getFullYear(),
    date.getMonth(),
    date.getDate(),
    date.getHours(),
    date.getMinutes(),
    date.getSeconds(),
  );
  return moment / 86400000 + 25569;
}

/** A cell shows every failure as #ERROR!; the note beside it says which it was, and its sentence. */
function titreCall_(id, given) {
  try {
    return titreFunctions_[id](...given.map(titreCell_));
  } catch (failure) {
    throw failure.code ? new Error(failure.code + " " + failure.message) : failure;
  }
}
