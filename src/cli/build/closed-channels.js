/**
 * A loader of the build. The embedded spreadsheet makes a message channel for each pause of a calculation
 * and never closes one that was heard, and a browser keeps an open port, with all it leads to, as long as
 * the page. Here the port is closed as it is heard.
 */
const kept = "if (!cancelled) callback();";
const closed =
  "channel.port1.onmessage = null; channel.port1.close(); channel.port2.close(); if (!cancelled) callback();";

/** @param {string} source */
export default function closedChannels(source) {
  if (source.split(kept).length !== 2) {
    throw new Error(
      "The spreadsheet's pauses are not as they were: look at closed-channels.js again.",
    );
  }
  return source.replace(kept, closed);
}
