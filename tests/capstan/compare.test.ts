import { expect, test } from 'vitest'
import { compareReductions, cordDrive, lewisRootStress, type ReductionJob, shaftForce } from '../../src/capstan/index.js'

const job: ReductionJob = {
  torque: '3 N m',
  wheelRadius: '48 mm',
  ratio: 6,
  centreDistance: '60 mm',
  width: '10 mm',
  cord: {
    axialRigidity: '20 kN',
    pretension: '60 N',
    friction: { low: 0.12, high: 0.2 },
    pinionTurns: 2,
    drumWrap: '180 deg',
    allowableTension: '200 N',
  },
  belt: { pitch: '3 mm', rootWidth: '1.5 mm', allowableShear: '2 MPa', axialRigidity: '60 kN', pretension: '50 N' },
  gear: { module: '1 mm', allowableStress: '40 MPa' },
}
const terms = compareReductions(job)

test('the terms by hand, at equal torque and size', () => {
  // Belt: 2π 8/3 = 16.8 and 100.5 teeth give 17 and 101, a pitch radius of 48.22 mm; gear: 16 and 96 teeth.
  expect(terms.ratio.belt?.si).toBeCloseTo(101 / 17, 12)
  expect(terms.ratio.gear?.si).toBe(6)
  expect(terms.tangentialForce.cord?.atLowFriction.si).toBeCloseTo(62.5, 9)
  expect(terms.tangentialForce.belt?.si).toBeCloseTo(3 / ((101 * 0.003) / (2 * Math.PI)), 9)
  expect(terms.tangentialForce.gear?.si).toBeCloseTo(62.5, 9)
  expect(terms.shaftForce.gear?.si).toBeCloseTo(62.5 / 0.9396926, 5)
  // z_m = 17/2 − 3·17·84/(2π²·60) = 4.883: four teeth, a factor of 0.6.
  expect(terms.engaged.belt?.si).toBe(4)
  expect(terms.engaged.note).toContain('0.6')
  // Mean shear 62.2 N/(4 × 10 × 1.5 mm²); root stress 62.5/(10 × 1 × 0.295).
  expect(terms.reserve.belt?.si).toBeCloseTo(2e6 / (62.2101 / (4 * 0.01 * 0.0015)), 4)
  expect(terms.reserve.gear?.si).toBeCloseTo(40 / 21.1864, 4)
  // Two spans of √(60² − (48.2239 − 8.1169)²) = 44.6253 mm on 60 kN, at 48.22 mm; shafts drawn together by both pulls, 50 N each at rest.
  expect(terms.windup.belt?.si).toBeCloseTo((62.2101 * 0.0446253) / (2 * 60000 * 0.0482239), 8)
  expect(terms.shaftForce.belt?.si).toBeCloseTo(Math.hypot((100 * 44.6253) / 60, (62.2101 * 40.107) / 60), 3)
  // (2/3)(0.06 + 0.028 + 0.03) mm over cos 20° and 48 mm.
  expect(terms.lostMotion.gear?.si).toBeCloseTo(0.0786667 / 0.9396926 / 48, 7)
  expect(terms.lostMotion.belt?.si).toBeCloseTo((2 * 0.09) / 48.2239, 6)
})

test('the cord column is the drive', () => {
  const own = cordDrive({ ...job.cord, pinionRadius: '8 mm', drumRadius: '48 mm', centreDistance: '60 mm' })
  const { windup, tautTension, slackTension } = own.windup('3 N m').atHighFriction
  expect(terms.windup.cord?.atHighFriction.si).toBeCloseTo(windup.si, 12)
  expect(terms.reserve.cord?.atHighFriction.si).toBeCloseTo(200 / tautTension.si, 9)
  const force = shaftForce({
    arrangement: 'crossed',
    tautTension,
    slackTension,
    pinionRadius: '8 mm',
    drumRadius: '48 mm',
    centreDistance: '60 mm',
  }).force
  expect(terms.shaftForce.cord?.atHighFriction.si).toBeCloseTo(force.si, 9)
  expect(terms.lostMotion.cord?.atLowFriction.si).toBeGreaterThan(0)
  expect(terms.drive.ratio.si).toBeCloseTo(6, 12)
})

test('a clearance that is not given is a labelled prior, or the least of the standard', () => {
  expect(terms.backlash.belt.source.level).toBe('assumption')
  expect(terms.backlash.belt.value.in('mm')).toBeCloseTo(0.09, 12)
  expect(terms.backlash.gear.source.where).toContain('10064')
  const own = compareReductions({ ...job, belt: { ...job.belt, backlash: '0 mm' }, gear: { ...job.gear, backlash: '0.2 mm' } })
  expect(own.lostMotion.belt?.si).toBe(0)
  expect(own.lostMotion.gear?.si).toBeCloseTo(0.2 / 48, 12)
  expect(own.backlash.gear.source.where).toBe('given with the job')
})

test('a belt whose slack span goes loose works on one span', () => {
  const slack = compareReductions({ ...job, belt: { ...job.belt, pretension: '20 N' } })
  expect((slack.windup.belt?.si ?? 0) / (terms.windup.belt?.si ?? 1)).toBeCloseTo(2, 12)
})

test.each([
  ['too few gear teeth', { gear: { ...job.gear, module: '2 mm' } }, "gear.module is '2 mm'; leaves 8 teeth"],
  ['too few belt teeth', { belt: { ...job.belt, pitch: '10 mm' } }, "belt.pitch is '10 mm'; leaves 5 teeth"],
  ['overlapping pulleys', { centreDistance: '50 mm' }, 'centreDistance'],
  ['a friction upside down', { cord: { ...job.cord, friction: { low: 0.3, high: 0.1 } } }, 'friction'],
  ['no cord', { cord: undefined }, 'cord'],
  ['a misspelt clearance', { belt: { ...job.belt, backlsh: '0.1 mm' } }, 'did you mean backlash'],
  ['a name that is not an input', { torqe: '3 N m' }, 'torqe'],
] as const)('%s is one clear error', (_, change, words) => {
  expect(() => compareReductions({ ...job, ...change } as never)).toThrow(words)
})

test('the root stress is that of the smaller gear', () => {
  const { rootStress } = lewisRootStress({ tangentialForce: '62.5 N', module: '1 mm', faceWidth: '10 mm', formFactor: 0.295 })
  expect(terms.reserve.gear?.si).toBeCloseTo(40e6 / rootStress.si, 9)
})
