import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { controlSheet, describeLeg, legMotion, legUrdf, strideTrajectory, upgradeLegText, withFields } from '../../src/leg/index.js'
import { TORSION } from './sprung-legs.js'

const example = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const leg = example('mudflat-leg-revised')
const text = legUrdf(leg)

test('a link turns about its length as its walls do', () => {
  const inertias = (of: string) => [...of.matchAll(/izz="([^"]+)"/g)].map(([, about]) => Number(about))
  // Boxes of 26 x 34 x 2.4 mm (95.1712 g without what it carries) and 20 x 24 x 2 mm (160 g): outer less inner rectangle,
  // m [b d (b² + d²) − b' d' (b'² + d'²)] / (12 [b d − b' d']).
  const box = (m: number, b: number, d: number, t: number) => {
    const [c, e] = [b - 2 * t, d - 2 * t]
    return (m * (b * d * (b * b + d * d) - c * e * (c * c + e * e))) / (12 * (b * d - c * e))
  }
  const upper = leg.links.upper.mass.si
  expect(inertias(text)[0]! / box(upper, 0.026, 0.034, 0.0024)).toBeCloseTo(1, 7)
  expect(inertias(text)[1]! / box(0.16, 0.02, 0.024, 0.002)).toBeCloseTo(1, 7)
})

test('shapes have the sizes of the document: links, drums and foot', () => {
  const shapes = [...text.matchAll(/<visual>(.*?)<\/visual>/g)].map(([, shape]) => shape)
  const drum = (length: number, diameter: number) =>
    `<origin xyz="0 0 0" rpy="1.57079633 0 0"/><geometry><cylinder radius="${diameter / 2}" length="${length}"/></geometry>`
  // Depth forward, width sideways; drums of 97.6 and 100 mm, 14 mm long; toes of 13.2 mm.
  expect(shapes).toEqual([
    '<origin xyz="0 0 -0.0825"/><geometry><box size="0.034 0.026 0.165"/></geometry>',
    drum(0.014, 0.0976),
    '<origin xyz="0 0 -0.09"/><geometry><box size="0.024 0.02 0.18"/></geometry>',
    drum(0.014, 0.1),
    '<geometry><sphere radius="0.0066"/></geometry>',
  ])
  expect([...text.matchAll(/<collision>/g)]).toHaveLength(3)
  const byLine = withFields(leg, {
    'joints.knee.drive.drum.grooveDiameter': undefined,
    'joints.knee.drive.drum.centreLineRadius': '51 mm',
  } as never)
  expect(legUrdf(byLine)).toContain(drum(0.014, 0.102))
  // Belts and motors on the joint have no drum to show.
  for (const name of ['orchard-leg-revised', 'desk-leg-revised']) expect(legUrdf(example(name))).not.toContain('rpy')
})

test('head and comment tell leg, robot and what the format leaves out', () => {
  const named = withFields(leg, { name: 'left & "front" -- <x>' } as never)
  expect(legUrdf(named).split('\n').slice(0, 4)).toEqual([
    '<?xml version="1.0"?>',
    '<!-- left &amp; &quot;front&quot; - &lt;x>: mass of the robot 10.5 kg, 4 legs; estimates for trained judgement -->',
    '<robot name="leg">',
    '  <link name="body"/>',
  ])
  expect(legUrdf(example('heath-leg-revised'))).toContain(
    '4 legs; a rod drives the knee from the hip axis: limits of the knee are the least over its travel; estimates',
  )
  // The drum on the hip axis is that of the hip: a knee behind a rod has none of its own.
  expect([...legUrdf(example('heath-leg-revised')).matchAll(/rpy=/g)]).toHaveLength(1)
})

test('a belt along the upper link takes its losses from the torque of the knee, and none from that of the hip', () => {
  const shingle = example('shingle-leg-revised')
  const effort = (joint: string) => Number(new RegExp(`name="${joint}"[^]*?effort="([^"]+)"`).exec(legUrdf(shingle))?.[1])
  const most = (joint: 'hip' | 'knee') =>
    Math.max(...controlSheet(shingle).joints[joint].currentLimits.map(({ jointTorque }) => jointTorque.si))
  const belt = shingle.joints.knee.through as { efficiency: { si: number } }
  // Pulleys of 48 and 40 teeth.
  expect(belt.efficiency.si).toBeLessThan(1)
  expect(effort('knee') / (most('knee') * (48 / 40) * belt.efficiency.si)).toBeCloseTo(1, 7)
  expect(effort('hip') / most('hip')).toBeCloseTo(1, 7)
})

test('a leg without a sideways hip has that joint fixed, and its links where they were', () => {
  const plain = withFields(leg, { 'joints.sidewaysHip': undefined } as never)
  expect(legUrdf(plain)).toContain('<joint name="sideways_hip" type="fixed"><parent link="body"/><child link="hip_link"/>')
  expect(text).toContain('<joint name="sideways_hip" type="revolute">')
  expect(text).toMatch(/<joint name="hip" type="revolute">\n.*<origin xyz="0 0.058 0"\/><axis xyz="0 1 0"\/>/)
  expect(text).toContain('<child link="foot"/><origin xyz="0 0 -0.18"/></joint>')
})

test('a spring in parallel with a drive goes with the motion of a leg, and no other does', () => {
  expect(legMotion(leg).parallelTorqueSi).toBeUndefined()
  expect(Object.keys(legMotion(leg))).not.toContain('parallelTorqueSi')
  const sprung = withFields(example('orchard-leg-revised'), { 'joints.knee.spring': TORSION } as never)
  expect(legMotion(sprung).parallelTorqueSi).toBeDefined()
})

test('a rate that leaves no row is refused, and one row is enough', () => {
  const { period } = legMotion(leg).path.si
  expect(() => strideTrajectory(leg, { rate: [0.4 / period, 'Hz'] })).toThrow(/rate is .*must leave at least one row a stride/)
  expect(strideTrajectory(leg, { rate: [1 / period, 'Hz'] }).rows).toBe(1)
})

test('an older document is upgraded to lines that people read: short sections on one line, long ones a field a line', () => {
  const upgraded = upgradeLegText(readFileSync(new URL('version-3/walker-revised.yaml', import.meta.url), 'utf8'))
  const lines = upgraded.split('\n')
  expect(lines.slice(0, 12)).toEqual([
    '# Left front leg of a four-legged walker that carries a moisture probe over tidal mudflats.',
    '# REVISED DESIGN. Every value in this file is invented for the example; nothing here was built.',
    '# It answers what gave first in mudflat-leg-first.yaml; `npm run demo` shows both.',
    '',
    'schemaVersion: 4',
    'name: Mudflat walker, left front leg, revised design',
    expect.stringMatching(/^remark: Invented example/),
    'robot:',
    '  mass: 10.5 kg',
    '  legs: 4',
    '  standHeight: 323 mm',
    '  hipSpacing: 420 mm',
  ])
  for (const line of [
    'supply: { voltage: 22 V, internalResistance: 70 mohm, currentLimit: 60 A }',
    '    range: [ -25 deg, 30 deg ]',
    '    section: { box: [ 26 mm, 34 mm ], wall: 2.4 mm }',
    '      - { material: ASA, thickness: 7 mm }',
  ])
    expect(lines).toContain(line)
  expect(() => upgradeLegText('robot: [')).toThrow(/upgradeLegText: text is not readable/)
})
