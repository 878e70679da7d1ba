import { Property, readInputs, type Source } from '../formula/index.js'
import { type In, InputError, type Note, Quantity, show } from '../units/index.js'
import { allowableStress } from './allowable.js'
import type { MoistureState } from './conditions.js'
import { findleyStrain } from './creep.js'
import { weakest } from './evidence.js'
import { type Material, requireProperty } from './record.js'
import { arrheniusShift } from './shift.js'
import { amorphousStrengthFactor, ROOM, tabulatedStrengthFactor } from './strength-factors.js'
import { isLayered, isRigid } from './strength-numbers.js'
import { columnOf, type RangeEnd } from './temperature-curve.js'

/** What a modulus must hold for. */
export interface ModulusConditions {
  /** Direction of the stress: along the layers or across them. */
  readonly direction: 'alongLayers' | 'acrossLayers'
  /** Temperature of the part. */
  readonly temperature: In<'temperature'>
  /** Time under load. */
  readonly duration: In<'time'>
  /** Moisture state. */
  readonly moisture: MoistureState
  /** Stress the part will carry; given, a stress above half of the short-term strength there leaves a note, since the modulus is a linear one. */
  readonly stress?: In<'stress'> | undefined
}

/** One step from the data-sheet modulus to the creep modulus. */
export interface ModulusFactor {
  readonly name: 'temperature' | 'moisture' | 'creep'
  readonly typical: number
  readonly low: number
  readonly high: number
  readonly source: Source
  readonly reason: string
}

/** A creep modulus with everything that led to it. */
export interface DesignModulus {
  /** Stress over strain after the time, with its range. */
  readonly modulus: Property<'modulus'>
  /** The modulus it starts from: short-term, dry, 23 °C, in the direction asked. */
  readonly start: Property<'modulus'>
  readonly factors: readonly ModulusFactor[]
  /** `aboveLimit` when the temperature leaves no stiffness to count on. */
  readonly state: 'usable' | 'aboveLimit' | 'aboveTable'
  readonly notes: readonly Note[]
}

const ONE: Source = { level: 'commonPractice', where: 'no loss' }
type Three = readonly [low: number, typical: number, high: number]

/** Share left and whether the temperature can be used. */
function warmth(material: Material, temperature: number): { share: Three; state: DesignModulus['state']; source: Source; reason: string } {
  const { modulusCurve, strengthCurve, family } = material
  // A glass keeps its stiffness while its strength falls: only where its transition is not known does the curve of strength stand in.
  const glassy = family === 'amorphous' && material.glassTransitionTemperature !== undefined
  const curve = modulusCurve ?? (glassy ? undefined : strengthCurve)
  if (curve !== undefined) {
    const at = (end: RangeEnd) => tabulatedStrengthFactor.si({ temperature, ...columnOf(curve, end) })
    const typical = at('typical')
    return {
      share: [at('low').factor, typical.factor, at('high').factor],
      state: typical.state,
      source:
        modulusCurve?.source ?? ({ level: 'assumption', where: `modulus taken to fall like strength: ${curve.source.where}` } as const),
      reason: modulusCurve?.conditions ?? 'stiffness taken to fall with temperature as strength does',
    }
  }
  if (family !== 'amorphous') return { share: [1, 1, 1], state: 'usable', source: ONE, reason: 'hardly falls at these temperatures' }
  const glass = requireProperty('designModulus', material, 'glassTransitionTemperature')
  const at = (glassTransition: number) => amorphousStrengthFactor.si({ temperature, glassTransition, margin: 15 }).state === 'usable'
  const share: Three = [at(glass.low) ? 1 : 0, at(glass.si) ? 1 : 0, at(glass.high) ? 1 : 0]
  return {
    share,
    state: share[1] === 1 ? 'usable' : 'aboveLimit',
    source: glass.source,
    reason: 'a glass keeps its stiffness to 15 K below its transition; the warmth is in the creep',
  }
}

/** Share of the modulus left after creep at a temperature, for one end of the ranges. */
function crept(c: number, n: number, energy: number | undefined, temperature: number, time: number): number {
  const shift =
    energy === undefined || temperature <= ROOM
      ? 1
      : arrheniusShift.si({ temperature, reference: ROOM, activationEnergy: energy, glassTransition: undefined })
  return (
    1 /
    findleyStrain.si({
      stress: 1,
      modulus: 1,
      creepCoefficient: c,
      creepExponent: n,
      time: time / shift,
      referenceTime: 3600,
      strength: undefined,
    })
  )
}

/**
 * The modulus to put into elastic formulas for a direction, temperature, time under load and moisture state, with every factor, its range and
 * its source. It can only be lower than the short-term modulus of the table.
 *
 * Creep is Findley's law with the time shifted by Arrhenius up to the glass transition where the table has an activation energy; the ends of the
 * range combine the ends of every number and are wide, because the activation energy is a guess. Throws an `InputError` for conditions that
 * cannot be and for a property the table lacks.
 */
export function designModulus(material: Material, conditions: ModulusConditions): DesignModulus {
  const where = 'designModulus'
  const x = readInputs(
    where,
    {
      direction: { oneOf: ['alongLayers', 'acrossLayers'] },
      temperature: { kind: 'temperature', min: 0 },
      duration: { kind: 'time', min: 0 },
      moisture: { oneOf: ['dry', 'conditioned', 'saturated'] },
      stress: { kind: 'stress', optional: true },
    },
    conditions as never,
  ) as {
    direction: ModulusConditions['direction']
    temperature: number
    duration: number
    moisture: MoistureState
    stress: number | undefined
  }
  const start =
    x.direction === 'acrossLayers' && isLayered(material)
      ? requireProperty(where, material, 'modulusAcrossLayers')
      : requireProperty(where, material, 'modulus')
  const warm = warmth(material, x.temperature)
  const factors: ModulusFactor[] = [
    { name: 'temperature', low: warm.share[0], typical: warm.share[1], high: warm.share[2], source: warm.source, reason: warm.reason },
  ]
  const rigid = isRigid(material)
  if (x.moisture !== 'dry' && !rigid) {
    const { si, low, high, source } = requireProperty(
      where,
      material,
      x.moisture === 'conditioned' ? 'modulusConditionedRatio' : 'modulusSaturatedRatio',
    )
    factors.push({ name: 'moisture', typical: si, low, high, source, reason: x.moisture })
  }
  if (!rigid) {
    const c = requireProperty(where, material, 'creepCoefficient')
    const n = requireProperty(where, material, 'creepExponent')
    const energy = material.activationEnergy
    const glass = material.glassTransitionTemperature
    const at = (cc: number, nn: number, e: number | undefined, highest: number | undefined) =>
      crept(cc, nn, e, Math.min(x.temperature, Math.max(ROOM, highest ?? x.temperature)), x.duration)
    // Before the reference time a larger exponent means less creep: both ends are tried.
    const ends = [n.low, n.high].flatMap((nn) => [at(c.high, nn, energy?.high, glass?.high), at(c.low, nn, energy?.low, glass?.low)])
    factors.push({
      name: 'creep',
      typical: at(c.si, n.si, energy?.si, glass?.si),
      low: Math.min(...ends),
      high: Math.max(...ends),
      source: weakest([c.source, n.source, ...(energy === undefined ? [] : [energy.source])]),
      reason: "Findley's law, time shifted to the temperature",
    })
  }
  const transition =
    x.moisture === 'dry'
      ? material.glassTransitionTemperature
      : (material.glassTransitionConditioned ?? material.glassTransitionTemperature)
  const times = (end: 'low' | 'typical' | 'high') =>
    factors.reduce((product, factor) => product * factor[end], end === 'typical' ? start.si : start[end])
  const notes: Note[] = []
  const say = (text: string) => notes.push({ formula: 'materials.designModulus', text })
  if (warm.state !== 'usable') say(`${material.name} has no stiffness to count on at this temperature`)
  if (x.duration > 10 * 31557600) say('longer than ten years: creep is extrapolated')
  if (material.activationEnergy !== undefined && transition !== undefined && x.temperature > transition.si && warm.state === 'usable')
    say('above the glass transition: the shift of time by Arrhenius is outside its range and held at its value for the dry transition')
  if (material.activationEnergy === undefined && !rigid && x.temperature > ROOM + 5 && warm.share[1] < 1 && x.duration > 3600)
    say('creep at the temperature is taken as fast as at 23 °C: no activation energy is known')
  if (x.stress !== undefined) {
    const { low: strength } = allowableStress(material, {
      direction: x.direction,
      temperature: [x.temperature, 'K'],
      duration: '0 s',
      moisture: x.moisture,
      safetyFactor: 1,
    }).stress
    if (Math.abs(x.stress) > 0.5 * strength)
      say(
        `stress above half of the low end of the short-term strength there, ${new Quantity(strength, 'stress')}: outside the linear range, the modulus is too high`,
      )
  }
  const text = `${material.name}, ${x.direction}, ${Math.round(x.temperature - 273.15)} °C, ${x.moisture}`
  const modulus = new Property(
    times('typical'),
    'modulus',
    times('low'),
    times('high'),
    weakest([start.source, ...factors.map(({ source }) => source)]),
    text,
    notes.length > 0 ? notes : undefined,
  )
  if (!(modulus.low <= modulus.si && modulus.si <= modulus.high))
    throw new InputError(where, [
      { path: 'material', given: show(material.name), accepts: 'must have ranges that contain their typical values' },
    ])
  return { modulus, start, factors, state: warm.state, notes }
}
