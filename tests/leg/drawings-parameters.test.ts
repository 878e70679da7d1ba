import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, type Leg, legDrawingNamed, parametersCsv, toTemplate } from '../../src/leg/index.js'
import { geared } from './gear-legs.js'
import { besideLinks } from './rod-bearing-legs.js'
import { sprungAndBalanced } from './sprung-legs.js'
import { cordKnee } from './through-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
const parametersOf = (leg: Leg) =>
  new Map(
    parametersCsv(assess(leg, { cases: ['stand'] }))
      .trim()
      .split('\n')
      .slice(1)
      .map((line) => line.split(','))
      .map(([part, name, value]): [string, number] => [`${part} ${name}`, Number(value)]),
  )

describe('parameters for a parametric CAD', () => {
  // Sizes of the documents; pitch circles by hand, teeth times pitch over pi; gears by module, tip two modules more than teeth and root 2.5 less.
  test.each<[string, () => Leg, Record<string, number>]>([
    [
      'cords',
      () => read('mudflat'),
      { 'drum_knee groove_diameter': 100, 'pinion_knee groove_pitch': 2, 'boss_hip depth': 11, 'plate_knee hole_diameter': 7 },
    ],
    [
      'belts',
      () => read('orchard'),
      { 'pulley_large_knee teeth': 108, 'pulley_large_knee pitch_diameter': (108 * 5) / Math.PI, 'belt_knee teeth': 123 },
    ],
    [
      'a belt through the hip',
      () => read('shingle'),
      { 'pulley_small_through teeth': 40, 'pulley_large_through pitch_diameter': (48 * 5) / Math.PI, 'belt_through adjustment': 3 },
    ],
    [
      'a cord through the hip',
      () => cordKnee,
      { 'drum_through groove_diameter': 64, 'pinion_through groove_diameter': 52, 'pinion_through centre_distance': 165 },
    ],
    [
      'gears',
      () => geared,
      {
        'gear_pinion_knee teeth': 15,
        'gear_wheel_knee tip_diameter': 0.8 * 66,
        'gear_wheel_knee root_diameter': 0.8 * 61.5,
        'gears_knee centre_distance': 31.6,
      },
    ],
    ['direct drives', () => read('desk'), { 'plate_knee width': 70, 'plate_knee opening_diameter': 12 }],
    [
      'a rod on bearings',
      () => besideLinks,
      {
        'rod crank': 34,
        'rod plane_offset': -17,
        'seat_knee bore_diameter': 15.97,
        'seat_drum pair_spacing': 15,
        'seat_crank outer_diameter': 21,
      },
    ],
    [
      'springs',
      () => sprungAndBalanced,
      { 'spring_holder_knee mandrel_diameter': 16, 'spring_holder_hip pin_depth': 22, 'spring_holder_hip moving_pin_down': -15 },
    ],
  ])('%s: each part is complete, and numbers are those of the document', (_, leg, expected) => {
    const found = parametersOf(leg())
    for (const [name, value] of Object.entries(expected)) expect(found.get(name), name).toBeCloseTo(value, 3)
    for (const [name, value] of found) expect(Number.isFinite(value), name).toBe(true)
    for (const link of ['upper', 'lower']) expect(found.get(`link_${link} length`)).toBeGreaterThan(0)
  })
})

describe('what a machinist needs to cut the plate and the shaft', () => {
  const verdict = assess(read('mudflat'), { cases: ['stand', 'walk'] })

  test('the template of the plate has its outline, its opening and the holes for the sleeves', () => {
    const svg = toTemplate(legDrawingNamed(verdict, 'motor-knee')!)!
    const radii = [...svg.matchAll(/<circle [^>]*r="([\d.]+)"/g)].map(([, r]) => Number(r))
    expect(radii.filter((r) => r === 3.5)).toHaveLength(4)
    expect(radii).toContain(7)
    const [, corners = ''] = /<path d="M([\d.,L]+)Z"/.exec(svg)!
    const outline = corners.split('L').map((one) => one.split(',').map(Number) as [number, number])
    const span = (axis: 0 | 1) => Math.max(...outline.map((one) => one[axis])) - Math.min(...outline.map((one) => one[axis]))
    expect([span(0), span(1)]).toEqual([expect.closeTo(84, 2), expect.closeTo(96, 2)])
  })

  test('drill, tap and the hole of the cap', () => {
    const { svg, table } = legDrawingNamed(verdict, 'shaft-end')!
    // M4: 4 less its pitch of 0.7; medium clearance hole 4.5 (ISO 273).
    for (const word of ['drill Ø3.3', 'tap M4', 'hole Ø4.5']) expect(svg).toContain(word)
    expect(table.rows.find(([name]) => name === 'hole of the cap')![1]).toBe('4.5')
  })

  test('bore of the drum and diameter of the pinion stand in the drawing of the cord', () => {
    const { svg } = legDrawingNamed(verdict, 'cord-drive-knee')!
    expect(svg).toContain('bore Ø16')
    expect(svg).toMatch(/>Ø15\.\d+</)
  })

  test('results of bolts that both joints share say whose they are', () => {
    const both = legDrawingNamed(verdict, 'bolt-motor')!.svg
    expect(both).toMatch(/\((hip|knee)\)/)
  })
})
