import { expect, test } from 'vitest'
import { nearNames } from '../../src/units/index.js'

const threads = ['M1.6', 'M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8', 'M10', 'M12']
const pins = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10].flatMap((d) => [`ISO 8734 ${d} mm m6`, `ISO 2338 ${d} mm h8`])
const bearings = ['10x19x5', '10x22x6', '10x26x8', '12x21x5']

test('designations that differ by their numbers are suggested by size, not by spelling', () => {
  expect(nearNames('M14', threads, 1)).toEqual(['M12'])
  expect(nearNames('M 7', threads)).toEqual(['M6', 'M8', 'M5'])
  expect(nearNames('ISO 8734 7 mm m6', pins, 2)).toEqual(['ISO 8734 6 mm m6', 'ISO 8734 8 mm m6'])
  expect(nearNames('ISO 8734 3.8 m6', pins, 1)).toEqual(['ISO 8734 4 mm m6'])
  expect(nearNames('iso 2338 9.5 mm h8', pins, 1)).toEqual(['ISO 2338 10 mm h8'])
  expect(nearNames('10x23x6', bearings, 1)).toEqual(['10x22x6'])
  expect(nearNames('12 × 22 × 5', bearings, 1)).toEqual(['12x21x5'])
})

test('names without numbers, or written otherwise, are suggested by spelling', () => {
  expect(nearNames('steal', ['steel', 'brass'])).toEqual(['steel'])
  expect(nearNames('M4 fine', threads, 1)).toEqual(['M4'])
  expect(nearNames('M44', threads, 1)).toEqual(['M4'])
})
