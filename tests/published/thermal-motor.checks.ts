import { readFileSync } from 'node:fs'
import type { Source } from '../../src/formula/index.js'
import { chebyshev } from '../../src/numeric/index.js'
import { lawPlace } from '../../src/thermal/chebyshev-law.js'
import { RISES } from '../../src/thermal/cooling-laws.js'
import {
  backEmfConstant,
  canLaw,
  hottestPhaseRise,
  motorBalance,
  motorStall,
  motorWarmUp,
  mountFilm,
  mountLaw,
  plateLaw,
  plateStore,
  ringOnRectangularPlate,
  ringsOnPlate,
  runawayTorque,
  surfaceCoefficient,
} from '../../src/thermal/index.js'
import { FILMS } from '../../src/thermal/plate-law.js'
import { published, publishedValue } from './harness.js'

interface Ring {
  readonly x: number
  readonly y: number
  readonly a1: number
  readonly a2: number
}
const rectangles: readonly {
  width: number
  height: number
  t: number
  k: number
  kz: number
  hm: number
  hf: number
  sources: readonly Ring[]
  means: readonly number[]
}[] = JSON.parse(readFileSync(new URL('../oracles/thermal-rectangle.json', import.meta.url), 'utf8'))

type PlateName = 'printed' | 'metal'
type Place = 'still' | 'sun'
const oracle: {
  plates: Record<PlateName, { a1: number; a2: number; side: number; t: number; k: number; kz: number; rho: number; c: number; eps: number }>
  motor: {
    ke: number
    beta: number
    r20: number
    wm: number
    mc: number
    d: number
    l: number
    eps: number
    contact: number
    capacity: number
  }
  where: Record<Place, { air: number; radiant: number; speed: number }>
  laws: readonly { plate: PlateName; where: Place; rise: number; heat: number; canHeat: number; can: number }[]
  balances: readonly { plate: PlateName; where: Place; torque: number; winding: number; mount: number; can: number; loss: number }[]
  edges: readonly { plate: PlateName; where: Place; torque: number; mount: number }[]
  stalls: readonly { plate: PlateName; torque: number; time: number; mount: number; can: number }[]
  runs: readonly { plate: PlateName; loss: number; time: number; mount: number }[]
} = JSON.parse(readFileSync(new URL('../oracles/thermal-motor.json', import.meta.url), 'utf8'))

const CELLS: Source = {
  level: 'computed',
  where: 'the motor with its plate in cells and films of their own, apart from the library (tests/oracles/thermal-motor.py)',
}
const RECTANGLE: Source = { level: 'computed', where: 'finite volumes in three dimensions (tests/oracles/thermal-rectangle.py)' }

const plateOf = (name: PlateName) => {
  const { a1, a2, side, t, k, kz } = oracle.plates[name]
  return { innerRadius: a1, outerRadius: a2, width: side, height: side, x: 0, y: 0, thickness: t, conductivity: k, conductivityAcross: kz }
}
const airOf = (place: Place) => {
  const { air, radiant, speed } = oracle.where[place]
  return { air, radiant, airSpeed: speed, pressure: 101325, factor: 1 }
}
const mountOf = (name: PlateName, place: Place) => {
  const { side, eps } = oracle.plates[name]
  return {
    ...plateLaw.si({ ...plateOf(name), behind: 0 }),
    contact: oracle.motor.contact,
    height: side,
    emissivity: eps,
    ...airOf(place),
  }
}
const lawsOf = (name: PlateName, place: Place) => {
  const { motor } = oracle
  const mount = mountLaw.si(mountOf(name, place))
  const can = canLaw.si({ diameter: motor.d, length: motor.l, emissivity: motor.eps, mountToCan: motor.mc, ...airOf(place) })
  return {
    air: airOf(place).air,
    radiant: airOf(place).radiant,
    mountConductance: mount.conductance,
    mountRadiantShare: mount.radiantShare,
    canConductance: can.conductance,
    canShare: can.canShare,
    canRadiantShare: can.radiantShare,
  }
}
const motorOf = (torque: number) => ({
  torque,
  backEmfConstant: oracle.motor.ke,
  magnetCoefficient: oracle.motor.beta,
  terminalResistance: oracle.motor.r20,
  otherLoss: 0,
  windingToMount: oracle.motor.wm,
})
const bodyOf = (name: PlateName, time: number) => {
  const { rho, c } = oracle.plates[name]
  const { contact } = oracle.motor
  const { capacity, conductance } = plateStore.si({ ...plateOf(name), density: rho, specificHeat: c, behind: 0, contact, film: 12, time })
  return { capacity: oracle.motor.capacity, storeCapacity: capacity, storeConductance: conductance, time }
}
const heatAt = (law: { conductance: readonly number[]; share: readonly number[] }, place: Place, rise: number) => {
  const { air, radiant } = oracle.where[place]
  const at = lawPlace(RISES, rise)
  return Math.exp(chebyshev(law.conductance, at)) * (rise - (radiant - air) * chebyshev(law.share, at))
}
/** Tolerances on temperatures are parts of the rise. */
const ofRise = (temperature: number, place: Place, part: number) => String(part * Math.abs(temperature - oracle.where[place].air) + 0.01)

export const checks = [
  ...[0, 0.1, 0.5].map((coupling, i) =>
    publishedValue(
      'thermal.hottestPhaseRise',
      `9 W, 0.8 K/W, ${coupling} W/K between phases: kelvin of the hottest`,
      () => hottestPhaseRise.si({ loss: 9, windingResistance: 0.8, phaseCoupling: coupling }).hottest,
      // numpy.linalg.solve of the three nodes: each 1/2.4 W/K to the base, 6, 1.5 and 1.5 W.
      [14.4, 11.386047, 8.765217][i]!,
      { level: 'referenceLibrary', where: 'numpy 2.4, linear solve of three nodes joined to a base and to each other' },
      '1e-6',
    ),
  ),
  ...published(backEmfConstant, {
    what: '0.1 peak phase volts at one turn a second',
    given: { speedConstant: '600 rpm/V', basis: 'spunPeakPhase' },
    gives: { typical: '0.0275664 V s/rad' },
    source: { level: 'referenceLibrary', where: 'sympy 1.14: sqrt(3)/(20 pi), line-to-line peak of three phases 120 degrees apart' },
  }),
  ...published(surfaceCoefficient, {
    what: 'hot water pipe of 80 mm, 70/20 degC, without radiation',
    given: { shape: 'horizontalCylinder', length: '80 mm', temperature: '70 degC', air: '20 degC', radiant: '20 degC', emissivity: 0 },
    gives: { convection: '5.869 W/(m^2 K)' },
    within: '0.3 %',
    source: { level: 'published', where: 'Çengel, ch. 9, hot water pipe, worked solution (its table of air)' },
  }),
  ...published(surfaceCoefficient, {
    what: 'radiation of a pipe, emissivity 0.7, 353 and 283 K',
    given: { shape: 'horizontalCylinder', length: '300 mm', temperature: '353 K', air: '283 K', radiant: '283 K', emissivity: 0.7 },
    gives: { radiation: '5.167 W/(m^2 K)' },
    within: '0.001 W/(m^2 K)',
    source: { level: 'published', where: 'Çengel, problem 3-94, worked solution (the print cuts 5.1675)' },
  }),
  ...rectangles
    .filter(({ sources }) => sources.length === 1)
    .map(({ width, height, t, k, kz, hm, hf, sources: [ring], means }) =>
      publishedValue(
        'thermal.ringOnRectangularPlate',
        `${1e3 * width} by ${1e3 * height} mm, ${k} W/(m K) along and ${kz} across, ring at ${1e3 * ring!.x}, ${1e3 * ring!.y} mm, film ${hm}`,
        () =>
          ringOnRectangularPlate.si({
            innerRadius: ring!.a1,
            outerRadius: ring!.a2,
            width,
            height,
            x: ring!.x,
            y: ring!.y,
            thickness: t,
            conductivity: k,
            conductivityAcross: kz,
            motorFaceCoefficient: hm,
            freeFaceCoefficient: hf,
            underMotor: 'covered',
          }).ring,
        means[0]!,
        RECTANGLE,
        '0.7 %',
      ),
    ),
  ...rectangles
    .filter(({ sources }) => sources.length === 2)
    .flatMap(({ width, height, t, k, kz, hm, hf, sources, means }) =>
      means.map((mean, i) =>
        publishedValue(
          'thermal.ringsOnPlate',
          `two motors on ${1e3 * width} by ${1e3 * height} mm, ${k} W/(m K): kelvin of ${i === 0 ? 'its own ring' : 'the other ring'} per watt`,
          () =>
            ringsOnPlate.si({
              x: sources.map(({ x }) => x),
              y: sources.map(({ y }) => y),
              innerRadius: sources.map(({ a1 }) => a1),
              outerRadius: sources.map(({ a2 }) => a2),
              width,
              height,
              thickness: t,
              conductivity: k,
              conductivityAcross: kz,
              motorFaceCoefficient: hm,
              freeFaceCoefficient: hf,
              underMotor: 'covered',
            }).resistances[2 * i]!,
          mean,
          RECTANGLE,
          // Parts of the resistance of the motor's own ring.
          String(0.0025 * means[0]!),
        ),
      ),
    ),
  publishedValue(
    'thermal.plateLaw',
    'the same at 12 W/(m^2 K), out of the table',
    () => {
      const { width, height, t, k, kz } = rectangles[3]!
      const law = plateLaw.si({
        innerRadius: 0.006,
        outerRadius: 0.0175,
        width,
        height,
        x: 0,
        y: 0,
        thickness: t,
        conductivity: k,
        conductivityAcross: kz,
        behind: 0,
      })
      return Math.exp(chebyshev(law.ring, lawPlace(FILMS, 12)))
    },
    rectangles[3]!.means[0]!,
    RECTANGLE,
    '0.7 %',
  ),
  ...oracle.laws.flatMap(({ plate, where, rise, heat, canHeat }) => [
    publishedValue(
      'thermal.mountLaw',
      `watts into a ${plate} plate at a rise of ${rise} K, ${where}`,
      () => {
        const { mountConductance: conductance, mountRadiantShare: share } = lawsOf(plate, where)
        return heatAt({ conductance, share }, where, rise)
      },
      heat,
      CELLS,
      String(0.003 * Math.abs(heat) + 2e-4),
    ),
    publishedValue(
      'thermal.mountFilm',
      `watts into a ${plate} plate at a rise of ${rise} K, ${where}, from the film`,
      () => mountFilm.si({ ...mountOf(plate, where), mount: airOf(where).air + rise }).heat,
      heat,
      CELLS,
      String(0.003 * Math.abs(heat) + 2e-4),
    ),
    publishedValue(
      'thermal.canLaw',
      `watts through the can at a rise of ${rise} K, ${where}, ${plate} plate`,
      () => {
        const { canConductance: conductance, canRadiantShare: share } = lawsOf(plate, where)
        return heatAt({ conductance, share }, where, rise)
      },
      canHeat,
      CELLS,
      String(0.0005 * Math.abs(canHeat) + 2e-5),
    ),
  ]),
  ...oracle.balances.flatMap(({ plate, where, torque, ...wanted }) =>
    (['winding', 'mount', 'can'] as const).map((part) =>
      publishedValue(
        'thermal.motorBalance',
        `kelvin of the ${part} at ${torque} N m, ${plate} plate, ${where}`,
        () => motorBalance.si({ ...motorOf(torque), ...lawsOf(plate, where) })[part],
        wanted[part],
        CELLS,
        ofRise(wanted[part], where, 0.005),
      ),
    ),
  ),
  ...oracle.edges.flatMap(({ plate, where, torque, mount }) => {
    const most = () => {
      const { torque: _, ...x } = { ...motorOf(0), ...lawsOf(plate, where) }
      return runawayTorque.si(x)
    }
    const named = `of the largest torque with a balance, ${plate} plate, ${where}`
    return [
      publishedValue('thermal.runawayTorque', `newton metres ${named}`, () => most().torque, torque, CELLS, '0.3 %'),
      publishedValue(
        'thermal.runawayTorque',
        `kelvin of the mounting face ${named}`,
        () => most().mount,
        mount,
        CELLS,
        ofRise(mount, where, 0.02),
      ),
    ]
  }),
  ...oracle.stalls.map(({ plate, torque, time, mount }) =>
    publishedValue(
      'thermal.motorStall',
      `kelvin of the mounting face after ${time} s at ${torque} N m, ${plate} plate`,
      () => motorStall.si({ ...motorOf(torque), ...lawsOf(plate, 'still'), ...bodyOf(plate, time) }).mount,
      mount,
      CELLS,
      ofRise(mount, 'still', 0.01),
    ),
  ),
  ...oracle.runs.flatMap(({ plate, loss, time, mount }) => [
    publishedValue(
      'thermal.motorWarmUp',
      `kelvin of the mounting face after ${time} s of ${loss} W, ${plate} plate`,
      () => {
        const laws = lawsOf(plate, 'still')
        return motorWarmUp.si({ otherLoss: loss, initial: laws.air, initialStore: laws.air, ...laws, ...bodyOf(plate, time) }).mount
      },
      mount,
      CELLS,
      ofRise(mount, 'still', 0.01),
    ),
    publishedValue(
      'thermal.plateStore',
      `the same with the ${plate} plate's store: joules of motor and store that the rise takes`,
      () => {
        const laws = lawsOf(plate, 'still')
        return (
          motorWarmUp.si({ otherLoss: loss, initial: laws.air, initialStore: laws.air, ...laws, ...bodyOf(plate, time) }).mount - laws.air
        )
      },
      mount - oracle.where.still.air,
      CELLS,
      '1 %',
    ),
  ]),
]
