import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { describeLeg, learn, learntText } from '../../src/leg/index.js'
import { cordDrive } from './cord-drive.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8')
const logs = Object.fromEntries(
  ['cordFriction knee', 'pretension knee', 'windup knee', 'heating'].map((log) => [log, read(`stand-logs/${log.replace(' ', '-')}.csv`)]),
)

test('the invented logs of the example give back the values that they were made with, and say so themselves', () => {
  for (const text of Object.values(logs)) expect(text).toMatch(/^# INVENTED LOG/)
  const learnt = learn(describeLeg(read('mudflat-leg-revised.yaml')), logs, { cases: ['walk', 'season'] })
  const { cords } = learnt.leg
  const knee = cordDrive(learnt.leg, 'knee')
  expect(Math.abs(knee.friction.typical - 0.175)).toBeLessThan(0.01)
  expect(knee.pretension.in('N')).toBeGreaterThan(274)
  expect(knee.pretension.in('N')).toBeLessThan(278)
  // 1 / (1 + 0.058 log10 of the hours of a year)
  expect(cords.braid!.pretensionLeft.typical).toBeCloseTo(1 / (1 + 0.058 * Math.log10(8766)), 2)
  expect(cords.braid!.axialRigidity.in('kN')).toBeGreaterThan(18)
  expect(cords.braid!.axialRigidity.in('kN')).toBeLessThan(21)
  // The heating curve was made with 0.83, 480 J/(kg K) and 0.82 K/W.
  for (const [path, made] of [
    ['environment.coolingFactor', 0.83],
    ['motors.main.specificHeat', 480],
    ['motors.main.windingToMount', 0.82],
  ] as const) {
    const [low, high] = learnt.moved.find((one) => one.path === path)!.interval!.map(Number.parseFloat) as [number, number]
    expect(made, path).toBeGreaterThan(low - 0.5 * (high - low))
    expect(made, path).toBeLessThan(high + 0.5 * (high - low))
  }
  expect(learnt.remarks.map(({ what }) => what).sort()).toEqual(['gap', 'spike'])
  expect(learntText(learnt)).toContain('cords.braid.axialRigidity')
})
