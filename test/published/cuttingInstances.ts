// Cutting-stock instances with their least number of lengths; each says where it is from.

export type Instance = {
  readonly name: string
  readonly length: number
  readonly pieces: readonly (readonly [length: number, count: number])[]
  readonly least: number
  readonly firstFitDecreasing: number
}

export const instances: readonly Instance[] = [
  {
    // Found on a public page on the cutting-stock problem, with its optimum of 73 and waste of 0.401 %.
    name: 'paper rolls of 5600',
    length: 5600,
    pieces: [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ],
    least: 73,
    firstFitDecreasing: 82,
  },
  {
    // Chvátal, Linear Programming (1983), p. 195: widths and demands found in public texts; 453 recomputed.
    name: 'Chvátal’s rolls of 100',
    length: 100,
    pieces: [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
    least: 453,
    firstFitDecreasing: 485,
  },
  {
    // From memory of a textbook, in halves; 44 recomputed.
    name: 'rolls of 91',
    length: 910,
    pieces: [
      [255, 78],
      [225, 40],
      [200, 30],
      [150, 30],
    ],
    least: 44,
    firstFitDecreasing: 49,
  },
  {
    // Our own: 24 ft of rail for a fence, in inches; 7 recomputed.
    name: 'rails of 288 in',
    length: 288,
    pieces: [
      [96, 5],
      [78, 8],
      [60, 9],
      [42, 7],
    ],
    least: 7,
    firstFitDecreasing: 7,
  },
]
