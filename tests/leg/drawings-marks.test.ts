// Marks of drawings that have no size in a table: axes, heads of screws, dots in teeth, the pose of a load case.
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { Facts } from '../../src/leg/drawings/facts.js'
import { poseOfCase } from '../../src/leg/drawings/leg-poses.js'
import { assess, describeLeg, legDrawings } from '../../src/leg/index.js'
import { shapesOf } from '../drawing/shapes.js'
import { geared } from './gear-legs.js'

const verdict = assess(describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8')), {
  cases: ['walk'],
})

test('the axis of a pinion stands out of it at both ends, as a centre line does', () => {
  const [drive] = legDrawings(verdict, { only: ['cord-drive-knee'] })
  const side = shapesOf(drive as never, /^Pinion at mid travel/)
  const [left, , right] = side.of('axis')[0]!
  const [from, , to] = side.of('thick')[0]!
  expect(left).toBeLessThan(from)
  expect(right).toBeGreaterThan(to)
})

test('the head of a shaft is as thick and as wide as that of a hexagon screw', () => {
  const [drawing] = legDrawings(verdict, { only: ['hip-shaft'] })
  const section = shapesOf(drawing as never, /^Section along the axis/)
  const cell = drawing!.table.rows.find(([name = '']) => /^diameter|shaft diameter|thread/.test(name))?.[1] ?? ''
  const diameter = Number(cell.replace(/^M/, ''))
  // ISO 4014: M8 has a head of 5.3 mm, M10 of 6.4, M12 of 7.5: 0.62 to 0.66 of the diameter; across flats 13, 16 and 18 mm: 1.5 to 1.63.
  const bearing = Math.min(...section.of('thick').map(([left]) => left))
  const heads = section.of('thin').filter(([, low, right, high]) => right <= bearing + 1e-6 && low === -high)
  expect(heads).toHaveLength(1)
  const [[left, low, right, high]] = heads as [(typeof heads)[number]]
  expect((right - left) / diameter).toBeGreaterThan(0.62)
  expect((right - left) / diameter).toBeLessThan(0.663)
  expect((high - low) / diameter).toBeGreaterThan(1.49)
  expect((high - low) / diameter).toBeLessThan(1.63)
})

test('the dots of both teeth lie in a tooth: within a quarter of a pitch of its middle, on its side of the pitch point', () => {
  const [pair] = legDrawings(assess(geared, { cases: ['walk'] }), { only: ['gear-pair-knee'] })
  const module = Number(pair!.table.rows.find(([name]) => name === 'module')![1])
  const [pinion, wheel] = shapesOf(pair as never, /^Teeth in mesh/).dots
  // A tooth of the pinion stands in the middle above the pitch line, one of the wheel half a pitch beside it below.
  expect(pinion![1]).toBeGreaterThan(0)
  expect(Math.abs(pinion![0])).toBeLessThan((Math.PI * module) / 4)
  expect(wheel![1]).toBeLessThan(0)
  expect(Math.abs(Math.abs(wheel![0]) - (Math.PI * module) / 2)).toBeLessThan((Math.PI * module) / 4)
})

test('the pose of a load case is the hardest of its stance, also with one joint straight; standing, where no joint is bent', () => {
  const facts = new Facts(verdict)
  const of = (hardestHip: number, hardestKnee: number) => poseOfCase(facts, facts.case('walk'), { hardestHip, hardestKnee })
  expect(of(-0.3, 0.9)).toEqual({ pose: { hip: -0.3, knee: 0.9 }, assumed: false })
  expect(of(-0.3, 0)).toEqual({ pose: { hip: -0.3, knee: 0 }, assumed: false })
  expect(of(0, 0.9)).toEqual({ pose: { hip: 0, knee: 0.9 }, assumed: false })
  const standing = poseOfCase(facts, facts.case('walk'), undefined)
  expect(standing.assumed).toBe(false)
  expect(Math.abs(standing.pose.knee)).toBeGreaterThan(0.1)
  expect(of(0, 0)).toEqual(standing)
  expect(of(0.2, Number.NaN)).toEqual(standing)
})
