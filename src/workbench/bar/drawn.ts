/** Lets the page be drawn before work that keeps it busy. */
export const drawn = () =>
  new Promise<void>((done) => {
    requestAnimationFrame(() => setTimeout(done));
  });
