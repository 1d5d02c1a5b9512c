import { expect, test } from 'vitest'
import { Fraction } from './fraction.ts'
import { maximise } from './linearProgram.ts'

const whole = (...figures: number[]) => figures.map((figure) => new Fraction(figure))
const limit = (most: number, ...coefficients: number[]) => ({
  coefficients: whole(...coefficients),
  most: new Fraction(most),
})

test('the textbook program of the glass works has its largest value, 36, at 2 and 6', () => {
  // From memory of Hillier & Lieberman, Introduction to Operations Research: 3x + 5y; x ≤ 4; 2y ≤ 12; 3x + 2y ≤ 18.
  const { value, variables } = maximise(whole(3, 5), [limit(4, 1, 0), limit(12, 0, 2), limit(18, 3, 2)])
  expect(String(value)).toBe('36')
  expect(variables.map(String)).toEqual(['2', '6'])
})

test('a program that starts outside of its limits finds its way in', () => {
  // Recomputed by hand: x + y ≥ 3, x ≤ 2, y ≤ 2; the least of x + 2y is 4, at 2 and 1.
  const { value } = maximise(whole(-1, -2), [limit(-3, -1, -1), limit(2, 1, 0), limit(2, 0, 1)])
  expect(String(value)).toBe('-4')
})

test('a program that goes round in circles under a careless rule ends under this one', () => {
  // From memory of Beale's example (1955): largest value 1/20.
  const goal = [new Fraction(3, 4), new Fraction(-150), new Fraction(1, 50), new Fraction(-6)]
  const { value } = maximise(goal, [
    {
      coefficients: [new Fraction(1, 4), new Fraction(-60), new Fraction(-1, 25), new Fraction(9)],
      most: new Fraction(0),
    },
    {
      coefficients: [new Fraction(1, 2), new Fraction(-90), new Fraction(-1, 50), new Fraction(3)],
      most: new Fraction(0),
    },
    limit(1, 0, 0, 1, 0),
  ])
  expect(String(value)).toBe('1/20')
})

test('limits that exclude one another, and a goal without end, are said', () => {
  expect(() => maximise(whole(1), [limit(-1, 1)])).toThrow('exclude')
  expect(() => maximise(whole(1), [limit(-1, -1)])).toThrow('no largest')
})
