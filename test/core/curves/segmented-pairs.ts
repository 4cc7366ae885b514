/** Sixteen pairs printed in the manual of a statistics package as its example of a segmented model. */
export const segmentedPairs = {
  rates: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 13, 15, 16],
  yieldsBuPerAc: [0.46, 0.47, 0.57, 0.61, 0.62, 0.68, 0.69, 0.78, 0.7, 0.74, 0.77, 0.78, 0.74, 0.8, 0.8, 0.78],
};
