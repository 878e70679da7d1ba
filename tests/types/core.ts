/**
 * Type tests: what must compile, and under `@ts-expect-error` what must not. Compiled by `npm run typecheck`, never run.
 */
import { unit } from 'mathjs'
import { slackTension } from '../../src/capstan/index.js'
import { bare, formula, recorder } from '../../src/formula/index.js'
import { deg, degC, type In, kelvins, m, mm, N, Nm, type Quantity, quantity } from '../../src/units/index.js'
import { GOOD_FORCES } from '../units/texts.js'

// what must compile
for (const text of GOOD_FORCES) slackTension({ load: text, friction: 0.2, wrapAngle: '3 turn' })
const load = 500
const slack: Quantity<'force'> = slackTension({ load: [load, 'N'], friction: '20 %', wrapAngle: deg(30) })
slackTension({ load: slack, friction: 0.2, wrapAngle: unit(30, 'deg') })
slackTension({ load: `${load} N`, friction: 0.2, wrapAngle: '3 turn' }, { strict: true })
const si: number = slackTension.si({ load: 500, friction: 0.2, wrapAngle: 18.85 })
const torque: Quantity<'torque'> = N(5).times(m(2)).as('torque')
const rise: Quantity<'temperatureDifference'> = degC(60).minus(degC(20))
const warm: Quantity<'temperature'> = degC(20).plus(kelvins(5)).minus(kelvins(2))

// what must not
// @ts-expect-error a length is not a force
slackTension({ load: '500 mm', friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error a length is not a force, as a quantity
slackTension({ load: mm(5), friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error a bare number has no unit
slackTension({ load: 500, friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error radians and degrees cannot be confused: a number is no angle
slackTension({ load: '500 N', friction: 0.2, wrapAngle: 180 })
// @ts-expect-error no blank between number and unit
slackTension({ load: '500N', friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error the text is empty
slackTension({ load: '', friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error a pair with a unit of another kind
slackTension({ load: [500, 'mm'], friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error a missing input
slackTension({ load: '500 N', friction: 0.2 })
// @ts-expect-error a misspelt input
slackTension({ load: '500 N', fricton: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error a surplus input
slackTension({ load: '500 N', friction: 0.2, wrapAngle: '3 turn', colour: 'red' })
// @ts-expect-error the kernel takes numbers
slackTension.si({ load: '500 N', friction: 0.2, wrapAngle: 3 })
// @ts-expect-error a force is not a torque
const wrong: Quantity<'torque'> = slackTension({ load: '500 N', friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error torque is not energy
quantity('energy', Nm(5))
// @ts-expect-error a temperature is not a difference
quantity('temperatureDifference', '30 degC')
// @ts-expect-error two temperatures do not add
degC(20).plus(degC(5))
// @ts-expect-error unlike kinds do not add
N(5).plus(Nm(5))
// @ts-expect-error a force is not read in millimetres
N(5).in('mm')
// @ts-expect-error a stress is not a modulus
quantity('modulus', quantity('stress', '5 MPa'))
// @ts-expect-error the torque constant says which current it is per
quantity('torqueConstantRmsPhase', quantity('torqueConstantPeakPhase', '0.08 N m/A'))
// @ts-expect-error a glass transition is not a heat deflection temperature
quantity('heatDeflectionTemperature180', quantity('glassTransitionTemperature', '60 degC'))
// @ts-expect-error a glass transition does not pass for a temperature unless named so with `as`
quantity('temperature', quantity('glassTransitionTemperature', '60 degC'))

// every shape of input and output is inferred
const shapes = formula('test.shapes', {
  inputs: {
    shape: { oneOf: ['round', 'square'] },
    loads: { list: 'force' },
    outer: { fields: { modulus: 'modulus', poisson: { kind: 'ratio', default: 0.3 } } },
    creep: { curve: ['time', 'ratio'] },
    wet: { flag: true, default: false },
    extra: { kind: 'length', optional: true },
  },
  output: { total: 'force', each: { list: 'force' }, state: { oneOf: ['held', 'loose'] }, until: { kind: 'time', infinite: true } },
  source: [{ level: 'unverified', where: 'test' }],
  si: ({ loads, extra, wet }) => ({ total: loads.length * (extra ?? 0), each: [...loads], state: wet ? 'loose' : 'held', until: 1 }),
})
const shaped = shapes({ shape: 'round', loads: ['5 N'], outer: { modulus: '2 GPa' }, creep: () => 0.5 })
const state: 'held' | 'loose' = shaped.state
const each: Quantity<'force'>[] = shaped.each
const until: Quantity<'time'> = shaped.until
// @ts-expect-error not one of the words
shapes({ shape: 'rund', loads: ['5 N'], outer: { modulus: '2 GPa' }, creep: () => 0.5 })
// @ts-expect-error the curve gives a ratio
shapes({ shape: 'round', loads: ['5 N'], outer: { modulus: '2 GPa' }, creep: () => '5 mm' })
// @ts-expect-error a nested field of another kind
shapes({ shape: 'round', loads: ['5 N'], outer: { modulus: '2 mm' }, creep: () => 0.5 })
formula('test.bad', {
  inputs: { x: 'length' },
  output: { a: 'force', state: { oneOf: ['held', 'loose'] } },
  source: [],
  // @ts-expect-error the kernel returns a word that is not declared
  si: ({ x }) => ({ a: x, state: 'lost' }),
})
formula('test.unknown', {
  // @ts-expect-error not a kind of quantity
  inputs: { x: 'lenght' },
  output: 'force',
  source: [],
  si: () => 1,
})
const recorded: number = recorder().of(slackTension, { load: 1, friction: 1, wrapAngle: 1 })
const plain: number = bare(slackTension, { load: 1, friction: 1, wrapAngle: 1 })
// @ts-expect-error an evaluator takes every input
bare(slackTension, { load: 1, friction: 1 })
// a kernel's optional inputs may be left out
shapes.si({ shape: 'round', loads: [1], outer: { modulus: 1, poisson: 0.3 }, creep: () => 1, wet: false })
shapes.si({ shape: 'round', loads: [1], outer: { modulus: 1, poisson: 0.3 }, creep: () => 1, wet: false, extra: undefined })
// @ts-expect-error an optional input is still a number
shapes.si({ shape: 'round', loads: [1], outer: { modulus: 1, poisson: 0.3 }, creep: () => 1, wet: false, extra: '1 mm' })
// @ts-expect-error the other inputs may not be left out
shapes.si({ shape: 'round', loads: [1], outer: { modulus: 1, poisson: 0.3 }, wet: false })
// a quantity's JSON form is an input, of its own kind only
slackTension({ load: { kind: 'force', value: 5, unit: 'N' }, friction: 0.2, wrapAngle: '3 turn' })
// @ts-expect-error the JSON form of a length is not a force
slackTension({ load: { kind: 'length', value: 5, unit: 'm' }, friction: 0.2, wrapAngle: '3 turn' })
// Operators would compare texts or drop units. The compiler rejects these; `>` within one kind and a sign in front compile and throw when run.
// @ts-expect-error unlike kinds
void (mm(5) > N(5))
// @ts-expect-error a quantity and a number
void (mm(5) > 5)
// @ts-expect-error arithmetic
void (mm(5) - mm(3))
// @ts-expect-error numbers only
void Math.max(mm(5), mm(3))
// @ts-expect-error unlike kinds do not compare
N(5).isGreaterThan(Nm(5))
const accepted: In<'length'>[] = ['5 mm', [5, 'mm'], mm(5)]

export { accepted, each, plain, recorded, rise, si, state, torque, until, warm, wrong }
