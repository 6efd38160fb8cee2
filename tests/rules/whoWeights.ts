/**
 * What WHO flags as no child's weight at an age: under -6 and over +5 of its own scores, by day, the wider of girl and boy.
 * WHO child growth standards, weight for age (anthro, data-raw/growthstandards/weianthro.txt, commit b776d8a).
 */
export const whoWeights = [
  { days: 0, leastKg: 0.94, mostKg: 6.25 },
  { days: 30, leastKg: 1.44, mostKg: 8.07 },
  { days: 91, leastKg: 2.36, mostKg: 10.86 },
  { days: 183, leastKg: 3.15, mostKg: 13.16 },
  { days: 365, leastKg: 3.97, mostKg: 16.33 },
  { days: 730, leastKg: 5.15, mostKg: 21.34 },
  { days: 1096, leastKg: 6.03, mostKg: 26.58 },
  { days: 1461, leastKg: 6.56, mostKg: 32.49 },
  { days: 1826, leastKg: 6.99, mostKg: 38.81 },
] as const;
