import { insulationClasses, magnetGrades } from '../../../thermal/index.js'
import { field, optional, ranged, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { partOf } from '../../numbers.js'
import { constant } from '../../run/index.js'

const motorIn = (x: LegNumbers, { motor }: { readonly motor: string }) => partOf(x.motors, motor, 'motor')

export const speedConstant = field('motor.speedConstant', ['motor'], 'speedConstant', (x, at) => motorIn(x, at).speedConstant)
export const speedConstantBasis = word('motor.speedConstantBasis', ['motor'], (x, at) => motorIn(x, at).speedConstantBasis)
export const terminalResistance = field(
  'motor.terminalResistance',
  ['motor'],
  'electricalResistance',
  (x, at) => motorIn(x, at).terminalResistance,
)
export const noLoadCurrent = field('motor.noLoadCurrent', ['motor'], 'current', (x, at) => motorIn(x, at).noLoadCurrent)
export const noLoadVoltage = field('motor.noLoadVoltage', ['motor'], 'voltage', (x, at) => motorIn(x, at).noLoadVoltage)
export const polePairs = optional('motor.polePairs', ['motor'], 'count', (x, at) => motorIn(x, at).polePairs)
export const phaseInductance = field('motor.phaseInductance', ['motor'], 'inductance', (x, at) => motorIn(x, at).phaseInductance)
export const rotorInertia = field('motor.rotorInertia', ['motor'], 'momentOfInertia', (x, at) => motorIn(x, at).rotorInertia)
export const mass = field('motor.mass', ['motor'], 'mass', (x, at) => motorIn(x, at).mass)
export const specificHeat = field('motor.specificHeat', ['motor'], 'specificHeat', (x, at) => motorIn(x, at).specificHeat)
export const canDiameter = field('motor.canDiameter', ['motor'], 'length', (x, at) => motorIn(x, at).canDiameter)
export const canLength = field('motor.canLength', ['motor'], 'length', (x, at) => motorIn(x, at).canLength)
export const canEmissivity = field('motor.canEmissivity', ['motor'], 'ratio', (x, at) => motorIn(x, at).canEmissivity)
export const mountInnerDiameter = field('motor.mountInnerDiameter', ['motor'], 'length', (x, at) => motorIn(x, at).mountInnerDiameter)
export const mountOuterDiameter = field('motor.mountOuterDiameter', ['motor'], 'length', (x, at) => motorIn(x, at).mountOuterDiameter)
/** Depth of the tapped holes in the face; absent where it is not given. */
export const tapDepth = optional('motor.tapDepth', ['motor'], 'length', (x, at) => motorIn(x, at).tapDepth)
export const windingToMount = field('motor.windingToMount', ['motor'], 'thermalResistance', (x, at) => motorIn(x, at).windingToMount)
export const mountToCan = field('motor.mountToCan', ['motor'], 'thermalResistance', (x, at) => motorIn(x, at).mountToCan)

/** Temperature that the insulation bears at its hottest spot. */
export const windingLimit = ranged(
  'motor.windingLimit',
  'temperature limit of the winding',
  ['motor'],
  'temperature',
  'ask the maker for the class of the winding',
  (x, at) => insulationClasses[motorIn(x, at).windingClass],
)
/** Temperature that the magnets bear. */
export const magnetLimit = ranged(
  'motor.magnetLimit',
  'temperature limit of the magnets',
  ['motor'],
  'temperature',
  'ask the maker for grade and load line; measure the speed constant before and after a hot run',
  (x, at) => {
    const { magnetSuffix } = motorIn(x, at)
    return magnetGrades[magnetSuffix === 'none' ? 'standard' : magnetSuffix]
  },
)

/** Back-EMF of a motor over that of its catalogue. */
export const catalogueScatter = constant('motor.catalogueScatter', {
  title: 'back-EMF constant over its catalogue value',
  kind: 'ratio',
  typical: 1,
  low: 0.95,
  high: 1.05,
  source: { level: 'commonPractice', where: 'catalogue speed constants, 5 % either way' },
  measuredBy: 'spin the motor at a known speed and measure its line-to-line voltage',
})
/** Temperature of the terminal resistance of the document. */
export const resistanceReference = constant('motor.resistanceMeasuredAt', {
  title: 'temperature of the specified terminal resistance',
  kind: 'temperature',
  typical: 293.15,
  source: { level: 'commonPractice', where: 'data sheets give the terminal resistance at 20 °C' },
})
/** Loss of the worst phase over the mean where a motor is held. */
export const worstPhase = constant('motor.worstPhase', {
  title: 'loss of the hottest phase over the mean loss, rotor at rest',
  kind: 'ratio',
  typical: 2,
  source: {
    level: 'computed',
    where: 'a phase that carries its peak while the rotor stands still heats twice as much as its mean when turning',
  },
})
/** Magnets lose this share of their strength per kelvin. */
export const magnetCoefficient = constant('motor.magnetCoefficient', {
  title: 'change of magnet strength with temperature',
  kind: 'temperatureCoefficient',
  typical: -0.0011,
  low: -0.0012,
  high: -0.001,
  source: { level: 'published', where: 'neodymium grade tables, −0.10 to −0.12 %/K' },
  measuredBy: 'measure the speed constant cold and warm',
})
/** The mean speed of a stride over its peak. */
export const meanOfPeakSpeed = constant('motor.meanOfPeakSpeed', {
  title: 'mean speed of a stride over its peak speed',
  kind: 'ratio',
  typical: 2 / Math.PI,
  source: { level: 'computed', where: 'mean of half a sine' },
})
