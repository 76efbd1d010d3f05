/** What the page's content security policy refuses, from now on: "frame-src https://…". */
export function hearRefusals(): () => readonly string[] {
  const heard = new Set<string>();
  document.addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI }) => {
    // where to, and not what: an address may hold what is nobody's business
    const to = URL.canParse(blockedURI) ? new URL(blockedURI).origin : blockedURI;
    heard.add(`${effectiveDirective} ${to}`);
  });
  return () => [...heard];
}
