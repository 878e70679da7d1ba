import { expect, test } from 'vitest'
import { formula } from '../../src/formula/index.js'
import {
  assessMount,
  continuousTorque,
  cooledSurface,
  intermittentTorque,
  motor,
  motorMount,
  network,
  periodicSteadyState,
  timeAtTorque,
  timeToLimit,
} from '../../src/thermal/index.js'
import { demoLimits, demoMotor, demoMount, demoSpecification } from './demo.js'

/** A board of 30 mm lying flat: below the range of its correlation. */
const board = network(
  { board: { capacity: '10 J/K', loss: '1 W' }, air: { fixed: '25 degC' } },
  cooledSurface('board', { area: '9 cm^2', shape: 'plateUp', length: '7.5 mm', emissivity: 0.9, surroundings: { air: '25 degC' } }),
)
const RANGE = {
  formula: 'thermal.naturalConvection',
  text: 'board convection: outside validity: plate up: Rayleigh number from 1e4 to 1e11',
}

test('a correlation outside its range is noted on every result of a network', () => {
  const steady = board.steady()
  expect(steady.notes).toEqual([RANGE])
  expect(steady.temperatures.board?.notes).toEqual([RANGE])
  const course = board.transient({ duration: '1 h', limits: { board: '40 degC' } })
  expect(course.notes).toEqual([RANGE])
  expect(course.at('10 min').board?.notes).toEqual([RANGE])
  expect(course.peaks.board?.temperature.notes).toEqual([RANGE])
  expect(course.passed.board?.notes).toEqual([RANGE])
  expect(timeToLimit(board, { board: '40 degC' }).time.notes).toEqual([RANGE])
  const cycle = periodicSteadyState([{ network: board, duration: '10 min' }])
  expect(cycle.notes).toEqual([RANGE])
  expect(cycle.peaks.board?.temperature.notes).toEqual([RANGE])
})

test('within range there is no note', () => {
  const { notes, temperatures } = demoMount().network({ torque: '0.3 N m' }).steady()
  expect(notes).toEqual([])
  expect(temperatures.mount?.notes).toBeUndefined()
})

test('a mount passes them on: a small plate lying flat, a can that spins too fast, magnets too hot', () => {
  const flat = motorMount(demoMotor(), {
    ...demoSpecification,
    plate: { ...demoSpecification.plate, width: '50 mm', height: '50 mm', attitude: 'motorUp' },
  })
  const told = (notes: readonly { readonly text: string }[] | undefined) => notes?.map(({ text }) => text).join()
  expect(told(continuousTorque(flat, demoLimits).torque.notes)).toContain('plate convection: outside validity: plate up')
  expect(told(intermittentTorque(flat, demoLimits, { dutyFactor: 0.5 }).torque.notes)).toContain('plate convection')
  expect(told(timeAtTorque(flat, { torque: '0.6 N m' }, demoLimits).time.notes)).toContain('plate convection')
  const { parts } = assessMount(flat, { torque: '0.2 N m' }, demoLimits)
  expect(told(parts[0]?.margin?.notes)).toContain('plate convection')

  const spinning = motorMount(motor({ speedConstant: '110 rpm/V', speedConstantBasis: 'catalogue', terminalResistance: '0.18 ohm' }), {
    ...demoSpecification,
    rotationCools: true,
  })
  expect(told(spinning.network({ torque: '0.1 N m', speed: '2000 rad/s' }).steady().notes)).toContain(
    'can convection: outside validity: rotational Reynolds number from 1e3 to 1e5',
  )
  const hot = continuousTorque(demoMount(), [{ part: 'mount', node: 'mount', limit: '600 degC' }])
  expect(hot).toMatchObject({ state: 'runaway', governs: 'runaway' })
  expect(told(hot.notes)).toContain('magnets below 200 °C')
  expect(demoMount().network({ torque: hot.torque }).steady().state).toBe('steady')
  expect(
    demoMount()
      .network({ torque: hot.torque.times(1.001) })
      .steady().state,
  ).toBe('runaway')
})

test('what the parts were given with arrives as well', () => {
  const measured = formula('test.conductivity', {
    inputs: { x: { kind: 'thermalConductivity', above: 0 } },
    output: 'thermalConductivity',
    valid: { 'a test bar of this print': () => false },
    source: [{ level: 'assumption', where: 'a test' }],
    si: ({ x }) => x,
  })
  const conductivity = measured({ x: '0.2 W/(m K)' })
  const noted = motorMount(demoMotor(), { ...demoSpecification, plate: { ...demoSpecification.plate, conductivity } })
  expect(noted.network({ torque: '0.2 N m' }).steady().temperatures.winding?.notes).toEqual(conductivity.notes)
})

test('a law that ends in no number is named, not taken for a runaway', () => {
  const broken = network({ a: { loss: (T) => (T > 300 ? Number.NaN : 5) }, air: { fixed: '25 degC' } }, [
    { from: 'a', to: 'air', conductance: '1 W/K' },
  ])
  expect(() => broken.steady()).toThrow('nodes.a.loss')
  expect(() => network({ a: {}, air: { fixed: '25 degC' } }, [{ from: 'a', to: 'air', conductance: () => -1 }])).toThrow(
    'links[0].conductance',
  )
  expect(() =>
    network({ a: { loss: () => Number.NaN }, air: { fixed: '25 degC' } }, [{ from: 'a', to: 'air', conductance: '1 W/K' }]),
  ).toThrow('nodes.a.loss')
})
