import type { Source } from "./source";

/** Publications on field trials and their analysis. */
export const trialSources = {
  "student-1908": {
    publisher: "Biometrika 6:1-25 (Student)",
    title: "The Probable Error of a Mean",
    year: "1908",
  },
  "gomez-gomez-1984": {
    publisher: "Wiley (Gomez and Gomez)",
    title: "Statistical Procedures for Agricultural Research, second edition: randomized blocks, missing plots, LSD",
    year: "1984",
  },
  "holm-1979": {
    publisher: "Scandinavian Journal of Statistics 6:65-70 (Holm)",
    title: "A Simple Sequentially Rejective Multiple Test Procedure",
    year: "1979",
  },
  "copenhaver-holland-1988": {
    publisher: "Journal of Statistical Computation and Simulation 30:1-15 (Copenhaver and Holland)",
    title: "Computation of the Distribution of the Maximum Studentized Range Statistic",
    year: "1988",
  },
  "piepho-2004": {
    publisher: "Journal of Computational and Graphical Statistics 13:456-466 (Piepho)",
    title: "An Algorithm for a Letter-Based Representation of All-Pairwise Comparisons",
    year: "2004",
  },
  "dersimonian-laird-1986": {
    publisher: "Controlled Clinical Trials 7:177-188 (DerSimonian and Laird)",
    title: "Meta-Analysis in Clinical Trials",
    year: "1986",
  },
  "knapp-hartung-2003": {
    publisher: "Statistics in Medicine 22:2693-2710 (Knapp and Hartung)",
    title: "Improved Tests for a Random Effects Meta-Regression with a Single Covariate",
    year: "2003",
  },
  "higgins-2009": {
    publisher: "Journal of the Royal Statistical Society A 172:137-159 (Higgins, Thompson and Spiegelhalter)",
    title: "A Re-Evaluation of Random-Effects Meta-Analysis",
    year: "2009",
  },
  "robinson-1991": {
    publisher: "Statistical Science 6:15-32 (Robinson)",
    title: "That BLUP Is a Good Thing: the Estimation of Random Effects",
    year: "1991",
  },
  "venables-ripley-2002": {
    publisher: "Springer (Venables and Ripley)",
    title: "Modern Applied Statistics with S, fourth edition: a factorial experiment in blocks",
    year: "2002",
  },
  "msu-p3930": {
    publisher: "Mississippi State University Extension",
    title: "P3930, on-farm trials: layout and number of replications",
    year: "undated",
  },
  "wsu-on-farm-testing": {
    publisher: "Washington State University Extension",
    title: "On-farm testing notes: strips, length, replication",
    year: "undated",
  },
} as const satisfies Record<string, Source>;
