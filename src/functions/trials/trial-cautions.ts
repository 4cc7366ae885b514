/** Said with every trial result. */
export const stripsNotPoints =
  "One strip is one observation, however many points the yield monitor wrote; weigh strips or average each before entering it.";

export const oneSeason = "A trial speaks for its field and season. Not clearly different is not the same as no effect.";

export const winnersShrink =
  "The best of several treatments looks better than it is; test it again before counting on its whole gain.";
