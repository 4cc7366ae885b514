/**
 * Statistical Reference Datasets of the National Institute of Standards and Technology, with their certified values.
 * Values are [estimate, standard error] in the order of our parameters.
 */
export interface ReferenceSet {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly certified: readonly (readonly [number, number])[];
  readonly residualSd: number;
}

function numbers(text: string): number[] {
  return text.trim().split(/\s+/).map(Number);
}

/** Calibration of ozone monitors, linear, lower difficulty, 36 pairs. */
export const norris: ReferenceSet = {
  x: numbers(`0.2 337.4 118.2 884.6 10.1 226.5 666.3 996.3 448.6 777.0 558.2 0.4 0.6 775.5 666.9 338.0 447.5 11.6 556.0
    228.1 995.8 887.6 120.2 0.3 0.3 556.8 339.1 887.2 999.0 779.0 11.1 118.3 229.2 669.1 448.9 0.5`),
  y: numbers(`0.1 338.8 118.1 888.0 9.2 228.1 668.5 998.5 449.1 778.9 559.2 0.3 0.1 778.1 668.8 339.3 448.9 10.8 557.7
    228.3 998.0 888.8 119.6 0.3 0.6 557.6 339.3 888.0 998.5 778.9 10.2 117.6 228.9 668.4 449.2 0.2`),
  certified: [
    [-0.262323073774029, 0.232818234301152],
    [1.00211681802045, 0.429796848199937e-3],
  ],
  residualSd: 0.884796396144373,
};

/** Calibration of load cells, quadratic, lower difficulty, 40 pairs: 20 loads, twice each. */
export const pontius: ReferenceSet = {
  x: Array.from({ length: 40 }, (_, index) => 150_000 * ((index % 20) + 1)),
  y: numbers(`.11019 .21956 .32949 .43899 .54803 .65694 .76562 .87487 .98292 1.09146 1.20001 1.30822 1.41599 1.52399
    1.63194 1.73947 1.84646 1.95392 2.06128 2.16844 .11052 .22018 .32939 .43886 .54798 .65739 .76596 .87474 .98300
    1.09150 1.20004 1.30818 1.41613 1.52408 1.63159 1.73965 1.84696 1.95445 2.06177 2.16829`),
  certified: [
    [0.673565789473684e-3, 0.107938612033077e-3],
    [0.732059160401003e-6, 0.157817399981659e-9],
    [-0.316081871345029e-14, 0.486652849992036e-16],
  ],
  residualSd: 0.205177424076185e-3,
};

/** Dental research, y = b1 (1 - exp(-b2 x)), lower difficulty, 14 pairs. */
export const misra1a: ReferenceSet = {
  x: numbers("77.6 114.9 141.1 190.8 239.9 289.0 332.8 378.4 434.8 477.3 536.8 593.1 689.1 760.0"),
  y: numbers("10.07 14.73 17.94 23.93 29.61 35.18 40.02 44.82 50.76 55.05 61.01 66.40 75.47 81.78"),
  certified: [
    [2.3894212918e2, 2.7070075241],
    [5.5015643181e-4, 7.2668688436e-6],
  ],
  residualSd: 1.018787633e-1,
};

/** Biochemical oxygen demand, y = b1 (1 - exp(-b2 x)), higher difficulty, 6 pairs. */
export const boxBod: ReferenceSet = {
  x: numbers("1 2 3 5 7 10"),
  y: numbers("109 149 149 191 213 224"),
  certified: [
    [2.1380940889e2, 1.2354515176e1],
    [5.4723748542e-1, 1.0455993237e-1],
  ],
  residualSd: 1.7088072423e1,
};
