import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  cordDrive,
  type DriveWish,
  drumLength,
  pinionLength,
  proposeDrive,
  pulleyGeometry,
  workingTension,
} from '../../src/capstan/index.js'

const braid = {
  diameter: '1.6 mm',
  breakingStrength: '2.3 kN',
  axialRigidity: '24 kN',
  friction: { low: 0.08, high: 0.2 },
  pretensionLeft: 0.8,
  expansion: '-5 ppm/K',
} as const
const wish = {
  ratio: 6,
  torque: '6 N m',
  travel: '120 deg',
  drumSpace: '110 mm',
  axialSpace: '40 mm',
  coldest: '-20 K',
  warmest: '20 K',
  frameExpansion: '90 ppm/K',
  cords: { braid },
} as const satisfies DriveWish

describe('drives for a wish', () => {
  test('are found, the smallest drum first, each with its governing limit', () => {
    const { state, proposals, message } = proposeDrive(wish)
    expect(state).toBe('met')
    const [first, second] = proposals
    expect(first!.design.drumRadius.si).toBeLessThanOrEqual(second!.design.drumRadius.si)
    expect(first!.governing.use).toBe(Math.max(...first!.limits.filter(({ sizedTo }) => !sizedTo).map(({ use }) => use)))
    expect(first!.limits.filter(({ sizedTo }) => sizedTo).map(({ what }) => what)).toEqual(['torque held after shelf and cold'])
    expect(message).toContain('governs the first one')
  })

  test('friction alone takes the turns it needs and a clamp those that the travel pays out', () => {
    const friction = proposeDrive({ ...wish, hold: 'frictionOnly' }).proposals
    const clamp = proposeDrive({ ...wish, hold: 'clampedMidPinion' }).proposals
    // Belt friction by hand: 7.7 turns at 0.08 leave 2 % of the tension; a clamp needs 6 · 120/360 + 1 turns.
    expect(Math.min(...friction.map(({ design }) => design.pinionTurns))).toBeGreaterThanOrEqual(2)
    expect(new Set(clamp.map(({ design }) => design.pinionTurns))).toEqual(new Set([3]))
  })

  test('hold every limit when their own functions work them out again', () => {
    let met = 0
    fc.assert(
      fc.property(
        fc.record({
          ratio: fc.double({ min: 2, max: 12, noNaN: true }),
          torque: fc.double({ min: 0.2, max: 20, noNaN: true }),
          travel: fc.double({ min: 20, max: 170, noNaN: true }),
          drum: fc.double({ min: 40, max: 200, noNaN: true }),
          friction: fc.double({ min: 0.05, max: 0.2, noNaN: true }),
        }),
        ({ ratio, torque, travel, drum, friction }) => {
          const { proposals } = proposeDrive({
            ...wish,
            ratio,
            torque: [torque, 'N m'],
            travel: [travel, 'deg'],
            drumSpace: [drum, 'mm'],
            axialSpace: '60 mm',
            cords: { braid: { ...braid, friction: { low: friction, high: 0.3 } } },
          })
          met += proposals.length
          for (const { design } of proposals) holds(design, torque, travel, drum, friction)
        },
      ),
      { numRuns: 25 },
    )
    expect(met).toBeGreaterThan(40)
  })

  test('a wish that no drive meets names what contradicts, by how much, and the nearest that can be met', () => {
    const { state, refusal, message } = proposeDrive({ ...wish, torque: '60 N m' })
    expect(state).toBe('refused')
    expect(refusal!.broken[0]!.use).toBeGreaterThan(1)
    const torque = refusal!.nearest.find(({ input }) => input === 'torque')!.met!
    const newtonMetres = torque.in('N m' as never)
    expect(proposeDrive({ ...wish, torque: [newtonMetres, 'N m'] }).state).toBe('met')
    expect(proposeDrive({ ...wish, torque: [1.01 * newtonMetres, 'N m'] }).state).toBe('refused')
    expect(message).toMatch(/torque .* instead of 60 N m/)
  })

  test('bad input is listed at once', () => {
    expect(() => proposeDrive({ ...wish, ratio: 0.5, torque: '-1 N m', cords: { braid: { ...braid, diameter: '0 mm' } } })).toThrow(
      /ratio[\s\S]*torque[\s\S]*cords\.braid\.diameter/,
    )
    expect(() => proposeDrive({ ...wish, cords: {} })).toThrow(/at least one cord/)
    expect(() => proposeDrive({ ...wish, cords: { braid: { ...braid, friction: { low: 0.3, high: 0.2 } } } })).toThrow(/low end|at most/)
  })
})

function holds(
  design: ReturnType<typeof proposeDrive>['proposals'][number]['design'],
  torque: number,
  travel: number,
  drum: number,
  friction: number,
) {
  const { pinionRadius, drumRadius, centreDistance, pinionTurns, drumWrap, pretension, hold, groovePitch } = design
  const heat = 24_000 * -20 * (90e-6 + 5e-6)
  const left = 0.8 * pretension.si + heat
  const drive = cordDrive({
    arrangement: 'crossed',
    pinionRadius,
    drumRadius,
    centreDistance,
    pinionTurns,
    drumWrap,
    travel: [travel, 'deg'],
    axialRigidity: '24 kN',
    pretension: [left, 'N'],
    friction,
    hold,
  })
  expect(drive.ratio.si).toBeCloseTo(design.ratio.si, 12)
  expect(drive.limits().atLowFriction.holdingTorque.si).toBeGreaterThanOrEqual(1.3 * torque * (1 - 1e-9))
  expect((2 * pinionRadius.si) / 1.6e-3).toBeGreaterThanOrEqual(8 - 1e-9)
  expect(2 * drumRadius.in('mm') + 1.6).toBeLessThanOrEqual(drum * (1 + 1e-9))
  const allowed = workingTension({ breakingStrength: '2.3 kN', endEfficiency: 0.8, bendEfficiency: 1, designFactor: 5 })
  expect(pretension.si - heat + torque / drumRadius.si).toBeLessThanOrEqual(allowed.si * (1 + 1e-9))
  const grooved = pinionLength({ groovePitch, wraps: pinionTurns + 1, ratio: design.ratio, travel: [travel, 'deg'] }).length
  expect(grooved.si).toBeLessThanOrEqual(design.pinionLength.si * (1 + 1e-9))
  const { drumWrapAngle } = pulleyGeometry({ arrangement: 'crossed', pinionRadius, drumRadius, centreDistance })
  const tracks = 2 * drumWrap.si < drumWrapAngle.si - 0.349 ? 1 : 2
  const lead = groovePitch.times(design.ratio).as('length')
  const full = drumLength({ drumLead: lead, largestWrap: [drumWrap.in('deg') + travel / 2, 'deg'], groovePitch, tracks })
  expect(full.si).toBeLessThanOrEqual(0.06 * (1 + 1e-9))
}
