import { expect, test } from 'vitest'
import { type Candidate, linksOf, originOf } from '../../../src/leg/run/links.js'

const leaf = (number: number, name: string, value: number, kind: string | undefined): Candidate => ({
  name,
  number: value,
  kind,
  from: { of: 'leaf', number, path: '' },
})

test('a number that is named after another of the same value belongs to that one', () => {
  const candidates = [leaf(0, 'gaits.trot.pushing', 0.15, 'ratio'), leaf(1, 'gaits.trot.stepLength', 0.15, 'length')]
  const places = [
    { path: 'tractionHighest', number: 0.15 },
    { path: 'stepLength', number: 0.15 },
  ]
  expect(places.map((place) => originOf(place, candidates, places)?.number)).toEqual([0, 1])
})

test('a 1 of a table of several kinds is no time of a second', () => {
  const candidates = [leaf(0, 'event.moment', 1, 'time'), leaf(1, 'shares.0', 1, undefined)]
  const from = (path: string, kind: string) => [...linksOf([{ path, number: 1, kind }], candidates).values()][0]?.number
  expect([from('duration', 'time'), from('shares.0', 'ratio')]).toEqual([0, 1])
})

test('a word that many numbers have, such as factor, tells none of them from another', () => {
  const candidates = [leaf(0, 'bolt.safety', 1.5, 'ratio'), leaf(1, 'material.fatigueFactor', 1.5, 'ratio')]
  const from = (path: string) => [...linksOf([{ path, number: 1.5, kind: 'ratio' }], candidates).values()][0]?.number
  expect([from('safetyFactor'), from('fatigueFactor')]).toEqual([0, 1])
  // Where it is the only word, it counts.
  expect(from('factor')).toBe(1)
})
