/** Ontario, t/ha of Agricultural Index 75 limestone to pH 7.0, 6.5, 6.0 and 5.5, by SMP buffer pH. */
export const ontarioLimeRows = [
  [7.0, 2, 2, 1, 1],
  [6.9, 3, 2, 1, 1],
  [6.8, 3, 2, 1, 1],
  [6.7, 4, 2, 2, 1],
  [6.6, 5, 3, 2, 1],
  [6.5, 6, 3, 2, 1],
  [6.4, 7, 4, 3, 2],
  [6.3, 8, 5, 3, 2],
  [6.2, 10, 6, 4, 2],
  [6.1, 11, 7, 5, 2],
  [6.0, 13, 9, 6, 3],
  [5.9, 14, 10, 7, 4],
  [5.8, 16, 12, 8, 4],
  [5.7, 18, 13, 9, 5],
  [5.6, 20, 15, 11, 6],
] as const;

/** Iowa, lb calcium carbonate equivalent per acre, 6 in, to pH 6.5 and 6.9, by SMP buffer pH. */
export const iowaLimeRows = [
  [7.0, 0, 1100],
  [6.8, 600, 2700],
  [6.6, 2100, 4400],
  [6.4, 3500, 6000],
  [6.2, 5000, 7700],
  [6.0, 6400, 9300],
  [5.8, 7900, 10600],
] as const;
