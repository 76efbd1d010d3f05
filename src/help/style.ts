/** One small style sheet for the help pages: readable on a phone, dark where the reader's machine is. */
export const styleSheet = `:root { color-scheme: light dark; --ink: #12262b; --paper: #fff; --line: #b9c8cb; --link: #0b4f5c; --wash: #eef4f4; }
@media screen and (prefers-color-scheme: dark) { :root { --ink: #e6eff0; --paper: #10191b; --line: #44585c; --link: #8fd0da; --wash: #1a2629; } }
* { box-sizing: border-box; }
body { margin: 0; font: 17px/1.55 system-ui, sans-serif; color: var(--ink); background: var(--paper); }
header { display: flex; flex-wrap: wrap; gap: 0 1.2rem; padding: 0.4rem 1.2rem; border-bottom: 1px solid var(--line); }
header a { padding: 0.4rem 0; }
main { max-width: 62rem; margin: 0 auto; padding: 0.5rem 1.2rem 3rem; }
h1 { font-size: 1.6rem; margin: 1rem 0 0.3rem; overflow-wrap: anywhere; }
h2 { font-size: 1.15rem; margin: 1.8rem 0 0.4rem; }
.lead { font-size: 1.1rem; margin-top: 0; }
a { color: var(--link); }
code { font: 0.92em ui-monospace, monospace; background: var(--wash); padding: 0.1em 0.3em; border-radius: 3px; overflow-wrap: break-word; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.45rem 0.7rem 0.45rem 0; border-bottom: 1px solid var(--line); }
li { margin: 0.35rem 0; }
h3 { font-size: 1rem; margin: 0.6rem 0 0.2rem; }
pre { font: 0.9em/1.5 ui-monospace, monospace; background: var(--wash); padding: 0.7rem 0.9rem; border-radius: 3px; white-space: pre-wrap; overflow-wrap: anywhere; }
figure { display: inline-block; vertical-align: top; max-width: 100%; margin: 0.8rem 1.6rem 0.8rem 0; }
figure img { max-width: 100%; height: auto; border: 1px solid var(--line); }
figcaption, .on { font-size: 0.9rem; opacity: 0.8; }
.beside { display: grid; grid-template-columns: repeat(auto-fit, minmax(16rem, 1fr)); gap: 0 1.6rem; }
.beside > div { border-left: 3px solid var(--line); padding-left: 0.8rem; }
input { font: inherit; width: 100%; max-width: 26rem; padding: 0.5rem; border: 1px solid var(--line); border-radius: 3px; color: inherit; background: var(--paper); }
#entries { padding-left: 0; list-style: none; }
#entries p { margin: 0.1rem 0 0; font-size: 0.9rem; display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 2; overflow: hidden; }
@media (max-width: 40rem) {
  :is(.words, .listing) thead { display: none; }
  :is(.words, .listing) :is(tr, td) { display: block; padding-right: 0; border: 0; }
  :is(.words, .listing) tr { padding: 0.5rem 0; border-bottom: 1px solid var(--line); }
  :is(.words, .listing) td { padding: 0.1rem 0; }
  .listing td:not(:first-child)::before { content: attr(data-head) ": "; font-weight: 600; }
  .words td:first-child { font-weight: 600; }
  .words td:nth-child(2) { font-style: italic; }
}
@media print { header { display: none; } main { max-width: none; padding: 0; } body { font-size: 11pt; } figure, pre, tr, .beside > div { break-inside: avoid; } h1, h2, h3 { break-after: avoid; } }
`;
