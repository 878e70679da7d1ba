import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { describeLeg, learn, learntText, withFields } from '../../src/leg/index.js'

import { TORSION } from './sprung-legs.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8')
const logs = Object.fromEntries(
  ['cordFriction knee', 'pretension knee', 'windup knee', 'heating'].map((log) => [log, read(`stand-logs/${log.replace(' ', '-')}.csv`)]),
)

test('the invented logs of the example are believed, taken together, and say themselves that they are invented', () => {
  for (const text of Object.values(logs)) expect(text).toMatch(/^# INVENTED LOG/)
  const learnt = learn(describeLeg(read('mudflat-leg-revised.yaml')), logs, { cases: ['walk', 'season'] })
  expect(learnt.moved.filter(({ state }) => state === 'notApplied')).toEqual([])
  const paths = ['joints.knee.drive.friction', 'cords.braid.axialRigidity', 'joints.knee.drive.pretension', 'cords.braid.pretensionLeft']
  for (const path of paths) {
    const one = learnt.moved.find((moved) => moved.path === path)!
    expect(one.state, path).toMatch(/corrected|confirmed/)
    expect(one.readings, path).toBeGreaterThan(0)
  }
  // One run indoors does not tell films outdoors to some per cent: the band stays as wide as formulas of films scatter.
  const { low, typical, high } = learnt.leg.environment.coolingFactor
  expect(high / typical).toBeGreaterThan(1.15)
  expect(low / typical).toBeLessThan(0.85)
  // What to do next is named with what it would bring, the most worth first.
  const worth = learnt.next.map(({ information, narrowed }) => information * (1 - narrowed))
  expect(worth.length).toBeGreaterThan(2)
  expect(worth).toEqual([...worth].sort((a, b) => b - a))
  for (const { todo, narrowed } of learnt.next) {
    expect(todo).toMatch(/log |:/)
    expect(narrowed).toBeLessThan(0.9)
  }
  const text = learntText(learnt)
  for (const part of ['cords.braid.axialRigidity', 'What to measure next', 'rests on', '95 % confidence']) expect(text).toContain(part)
})

test('the invented logs of a second stage and of a spring are believed, and give what they were made with', () => {
  const shingle = (log: string) => read(`stand-logs/shingle/${log.replace(' ', '-')}.csv`)
  const leg = describeLeg(read('shingle-leg-revised.yaml'))
  const sprung = withFields(leg, {
    'joints.knee.spring': { ...TORSION, mandrel: undefined, rate: '2.5 N m/rad', seat: { material: 'aluminium 6061-T6', length: '40 mm' } },
  })
  const names = ['windup throughHip', 'beltPitch throughHip', 'springTorque knee']
  for (const name of names) expect(shingle(name)).toMatch(/^# INVENTED LOG/)
  const learnt = learn(sprung, Object.fromEntries(names.map((name) => [name, shingle(name)])), { cases: ['walk'] })
  expect(learnt.moved.map(({ state }) => state)).not.toContain('notApplied')
  const within = (path: string, truth: number) => {
    const { interval } = learnt.moved.find((one) => one.path === path)!
    const [low, high] = interval!.map((text) => Number.parseFloat(text)) as [number, number]
    expect([path, low < truth, high > truth]).toEqual([path, true, true])
  }
  within('joints.knee.through.pretension', 770)
  within('joints.knee.spring.rate', 2.31)
  within('joints.knee.spring.freeAngle', 13)
  within('belts.link.pretensionLeft', 0.78)
})
