/** The grid's drawings ask for the Tab key before everything else on the page: they get it where they stand. */
export function keepTabOrder(container: HTMLElement): void {
  const mend = () => {
    for (const part of container.querySelectorAll<HTMLElement>('[tabindex]:not([tabindex="0"], [tabindex="-1"])')) {
      part.tabIndex = 0;
    }
  };
  new MutationObserver(mend).observe(container, { childList: true, subtree: true, attributeFilter: ["tabindex"] });
  mend();
}
