import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { assessRobot, describeLeg, legNumbers, robotText, withFields } from '../../src/leg/index.js'
import { feetOf, stanceShares } from '../../src/leg/robot/feet.js'
import { Quantity } from '../../src/units/index.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const G = 9.80665
const [level, offset] = [
  assessRobot(leg, { housing: { surface: '0.2 m^2' } }),
  assessRobot(
    withFields(leg, { 'robot.centreOfMassForward': '10 mm', 'robot.centreOfMassLeft': '-6 mm', 'robot.hindLegs': 'mirrored' } as never),
  ),
]
const text = robotText(level).split('\n')

test('a robot passes where no reserve is below 1, and meets its target where none is below what is required', () => {
  const margins = (robot: typeof level) => robot.checks.map(({ reserve, requiredReserve }) => [reserve >= 1, reserve >= requiredReserve])
  expect(margins(level).flat()).not.toContain(false)
  expect([level.passes, level.meetsTarget]).toEqual([true, true])
  expect(text[0]).toBe('The robot holds as a whole: every check has its required reserve.')
  // It tips at 27.82 deg across a slope of 14 deg: a reserve of 1.99.
  const strict = assessRobot(withFields(leg, { 'usage.requiredReserve': 2.2 } as never))
  expect([strict.passes, strict.meetsTarget]).toEqual([true, false])
  expect(robotText(strict)).toMatch(/^The robot holds, but 1 of 7 checks have less than their required reserve\./)
  const failing = assessRobot(withFields(leg, { 'usage.requiredReserve': 2.2, 'supply.energy': '10 W h' } as never))
  expect([failing.passes, failing.meetsTarget]).toEqual([false, false])
  expect(robotText(failing)).toMatch(/^The robot fails: 1 of 8 checks are below 1\./)
})

test('one foot is checked with the largest force on any foot', () => {
  const { demand } = offset.checks.find(({ id }) => id === 'robot.footLoad')!
  const forces = offset.gaits.walk.corners.map(({ peakForce }) => peakForce.si)
  expect(demand.si).toBe(Math.max(...forces))
  expect(Math.min(...forces)).toBeLessThan(demand.si)
})

test('each leg has its share of a weight off the middle, and the hind legs alone are mirrored', () => {
  const width = leg.robot.hipTrack.si + 2 * leg.links.hipOffset.si
  const share = (front: number, left: number) => 0.25 + (front * 0.01) / (2 * 0.42) - (left * 0.006) / (2 * width)
  const corners = ['leftFront', 'rightFront', 'leftHind', 'rightHind'] as const
  const shares = [share(1, 1), share(1, -1), share(-1, 1), share(-1, -1)]
  for (const gait of ['walk', 'trot'] as const)
    for (const [k, { corner, mirrored, meanShare }] of offset.gaits[gait].corners.entries()) {
      expect([corner, mirrored]).toEqual([corners[k], corner.endsWith('Hind')])
      expect(meanShare.si).toBeCloseTo(shares[k]!, 12)
    }
  expect(level.gaits.walk.corners.some(({ mirrored }) => mirrored)).toBe(false)
  // The lightest foot is the first to lift, over a shallower hollow than on a robot whose weight is in the middle.
  expect(offset.stand.hollow!.si).toBeLessThan(0.95 * level.stand.hollow!.si)
})

test('at every moment of a walk the feet on the ground bear the whole weight', () => {
  const x = legNumbers(withFields(leg, { 'robot.centreOfMassForward': '10 mm' } as never))
  const feet = feetOf(x, 'walk')
  const { count, legs, stands } = feet.samples
  const shares = stanceShares(x, feet)
  for (let i = 0; i < count; i++) {
    const now = (i + 0.5) / count
    const sum = shares.reduce((all, own, k) => {
      const since = (now - feet.legs[k]!.phase + 1) % 1
      return all + (stands[legs * i + k] === 1 ? own[Math.round(since * count - 0.5)]! : 0)
    }, 0)
    expect(sum).toBeCloseTo(1, 9)
  }
})

test('a trot rolls about two feet at least as far as the moment of its weight turns it in that time', () => {
  // With a duty factor of 0.55 two feet stand alone for 0.45 of the stride. The line of a pair lies farthest from the middle at the end of that
  // time: by half its way, times the sine of the line's angle. A point mass falls by g d t² / (2 (d² + h²)).
  const { dutyFactor, stepLength, speed } = leg.gaits.trot!
  const stride = stepLength.si / speed.si / dutyFactor.si
  const time = (1 - dutyFactor.si) * stride
  const [width, spacing, height] = [leg.robot.hipTrack.si + 2 * leg.links.hipOffset.si, 0.42, 0.29]
  const away = (0.5 * speed.si * time * width) / Math.hypot(width, spacing)
  const angle = (G * away * time * time) / (2 * (away * away + height * height))
  // A sample is a 216th of the time.
  expect(level.gaits.trot.tips.si / angle).toBeGreaterThan(0.97)
  expect(level.gaits.trot.tips.si / angle).toBeLessThan(1.03)
})

test('a robot that stands still draws its electronics, the heat of its motors and that of its controllers', () => {
  // Switches of almost no resistance lose what they lose by switching: eight controllers of 0.6 W.
  // The document accepts none so small: a leg that was changed as an object is not read again.
  const lossless = {
    ...leg.controllers.main,
    onResistance: new Quantity(1e-12, 'electricalResistance'),
    switchingLoss: new Quantity(0.6, 'power'),
  }
  const { stand } = assessRobot({ ...leg, controllers: { ...leg.controllers, main: lossless } } as typeof leg)
  expect(stand.power.si - stand.motorHeat.si - leg.supply.electronics.si).toBeCloseTo(4.8, 9)
})

test.each(['sideways', 'turnRate'] as const)('%s needs a motor at the sideways hip', (name) => {
  const given = name === 'sideways' ? '0.1 m/s' : '10 deg/s'
  expect(() => assessRobot(leg, { [name]: given })).toThrow(new RegExp(`${name} is .*must be 0: no motor drives the sideways hip`))
})

test('the text has its figures in order, each with what it is', () => {
  const { stand, gaits } = level
  const heads = text.filter((line) => /^[A-Z][^:.]*$/.test(line))
  expect(heads).toEqual([
    'Checks, the smallest margin first',
    ...['Standing on the level', 'Walking', 'Trotting', 'Slopes', 'Walking across the slope', 'Touch-down, rotors at rest'],
  ])
  const after = (head: string) => text.slice(text.indexOf(head) + 1, text.indexOf('', text.indexOf(head)))
  const line = (what: string, ...values: readonly { toString: () => string }[]) => `  ${what.padEnd(44)} ${values.join(', ')}`
  expect(after('Standing on the level')).toEqual([
    line('force on the left front foot', stand.forces.leftFront),
    line('force on the right front foot', stand.forces.rightFront),
    line('force on the left hind foot', stand.forces.leftHind),
    line('force on the right hind foot', stand.forces.rightHind),
    line('hollow that leaves one foot without load', stand.hollow!),
    line('power, of which heat of the motors', stand.power, stand.motorHeat),
  ])
  expect(after('Slopes').map((one) => one.slice(0, 46).trim())).toEqual([
    'up 14°: front pair, hind pair',
    'friction needed; tips at',
    'down 14°: front pair, hind pair',
    'friction needed; tips at',
    'across 14°: lower pair, upper pair',
    'friction needed; tips at',
  ])
  expect(after('Walking').map((one) => one.slice(2, 44).trim())).toEqual([
    'least distance inside the feet',
    ...['left front', 'right front', 'left hind', 'right hind'].map((corner) =>
      `${corner}: peak force, motor torque hip and knee`.slice(0, 42).trim(),
    ),
    ...['power of the bus: mean, peak', 'power that flows back: mean, peak', 'current at the peak, voltage left'],
    ...['heat of motors, of controllers', 'energy per metre, cost of transport'],
  ])
  expect(text).toContain(line('power of the bus: mean, peak', gaits.walk.meanPower, gaits.walk.peakPower))
  expect(text).toContain(line('air in the housing over the air outside', level.housingRise!))
  expect(text.join('\n')).not.toContain('charge')
  expect(robotText(offset)).not.toContain('housing')
})
