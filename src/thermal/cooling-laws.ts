import { formula } from '../formula/index.js'
import { chebyshev } from '../numeric/index.js'
import { lawCoefficients, lawPlace, lawRange } from './chebyshev-law.js'
import { FILMS } from './plate-law.js'
import { surfaceCoefficient } from './surface-coefficient.js'

/** Rises of a mounting face over the air for which laws are tabulated, K. */
export const RISES = /* @__PURE__ */ lawRange(0.01, 450, 12)

/** A film that moves by less than this part of itself has settled. */
const SETTLED = 1e-8
const MOST_ROUNDS = 60

/** Finds the film that belongs to the surface temperature which it gives. Aitken's step between plain rounds. */
function settledFilm(start: number, next: (film: number) => number): number {
  let film = start
  for (let k = 0; k < MOST_ROUNDS; k++) {
    const first = next(film)
    if (Math.abs(first - film) < SETTLED * film) return first
    const second = next(first)
    const bend = second - 2 * first + film
    const jump = bend === 0 ? second : film - (first - film) ** 2 / bend
    film = jump > 0.5 * second && jump < 2 * second ? jump : second
  }
  return film
}

/** Air and what surfaces see, as inputs of a law. */
const AIR = {
  /** Temperature of the air. */
  air: { kind: 'temperature', min: '-60 degC', max: '100 degC' },
  /** Temperature of what the surfaces see. */
  radiant: { kind: 'temperature', min: 0 },
  /** Speed of the air over the surfaces. */
  airSpeed: { kind: 'velocity', min: 0, default: '0 m/s' },
  /** Air pressure. */
  pressure: { kind: 'stress', above: 0, default: '101325 Pa' },
  /** What films are multiplied by, such as the factor of a calibration. */
  factor: { kind: 'ratio', above: 0, default: 1 },
} as const

/**
 * Law of a mount: conductance from the mounting face of a motor to the air, over the rise of that face from 0.01 to 450 K.
 *
 * The film belongs to the mean temperature of the plate, which a printed plate has far below its hot ring. The law is within 0.1 % of that balance.
 */
export const mountLaw = /* @__PURE__ */ formula('thermal.mountLaw', {
  inputs: {
    /** Table of the plate: ring of `plateLaw`. */
    ring: { list: 'ratio' },
    /** Table of the plate: mean of `plateLaw`. */
    mean: { list: 'ratio' },
    /** Resistance of the contact between motor and plate. */
    contact: { kind: 'thermalResistance', min: 0 },
    /** Height of the plate, upright. */
    height: { kind: 'length', above: 0 },
    /** Emissivity of the plate. */
    emissivity: { kind: 'ratio', min: 0, max: 1 },
    ...AIR,
  },
  output: {
    /** Coefficients of the logarithm of the conductance, W/K. */
    conductance: { list: 'ratio' },
    /** Coefficients of the share that radiation has in the film. */
    radiantShare: { list: 'ratio' },
  },
  assumes: ['plate upright, the same film on both faces, at the mean temperature of the plate'],
  source: [{ level: 'computed', where: 'heat balance of plate and film at 12 Chebyshev nodes' }],
  si: ({ ring, mean, contact, height, emissivity, air, radiant, airSpeed, pressure, factor }) => {
    const conductances: number[] = []
    const shares: number[] = []
    let film = 10
    for (const rise of RISES.nodes) {
      let share = 0
      let resistance = 0
      film = settledFilm(film, (guess) => {
        const place = lawPlace(FILMS, guess)
        resistance = contact + Math.exp(chebyshev(ring, place))
        const far = air + share * (radiant - air)
        const temperature = far + ((air + rise - far) * Math.exp(chebyshev(mean, place))) / resistance
        const { radiation, total } = surfaceCoefficient.si({
          shape: 'verticalPlate',
          length: height,
          temperature,
          air,
          radiant,
          airSpeed,
          pressure,
          emissivity,
          factor,
        })
        share = radiation / total
        return total
      })
      conductances.push(-Math.log(resistance))
      shares.push(share)
    }
    return { conductance: lawCoefficients(RISES, conductances), radiantShare: lawCoefficients(RISES, shares) }
  },
})

/**
 * Law of a motor's can: conductance from the mounting face through the can to the air, and how far the can warms with it, over the rise of the mounting face from 0.01 to
 * 450 K.
 */
export const canLaw = /* @__PURE__ */ formula('thermal.canLaw', {
  inputs: {
    /** Diameter of the can. */
    diameter: { kind: 'length', above: 0 },
    /** Length of the can. */
    length: { kind: 'length', above: 0 },
    /** Emissivity of the can. */
    emissivity: { kind: 'ratio', min: 0, max: 1 },
    /** Resistance from the mounting face to the can. */
    mountToCan: { kind: 'thermalResistance', min: 0 },
    ...AIR,
  },
  output: {
    /** Coefficients of the logarithm of the conductance, W/K. */
    conductance: { list: 'ratio' },
    /** Coefficients of the rise of the can over the rise of the mounting face. */
    canShare: { list: 'ratio' },
    /** Coefficients of the share that radiation has in the film. */
    radiantShare: { list: 'ratio' },
  },
  assumes: ['side and one end of the can, cooled as a horizontal cylinder'],
  source: [{ level: 'computed', where: 'heat balance of can and film at 12 Chebyshev nodes' }],
  si: ({ diameter, length, emissivity, mountToCan, air, radiant, airSpeed, pressure, factor }) => {
    const area = canArea(diameter, length)
    const conductances: number[] = []
    const canShares: number[] = []
    const shares: number[] = []
    let film = 10
    for (const rise of RISES.nodes) {
      let share = 0
      film = settledFilm(film, (guess) => {
        const far = air + share * (radiant - air)
        const temperature = far + (air + rise - far) / (1 + mountToCan * guess * area)
        const { radiation, total } = surfaceCoefficient.si({
          shape: 'horizontalCylinder',
          length: diameter,
          temperature,
          air,
          radiant,
          airSpeed,
          pressure,
          emissivity,
          factor,
        })
        share = radiation / total
        return total
      })
      conductances.push(-Math.log(mountToCan + 1 / (film * area)))
      canShares.push(1 / (1 + mountToCan * film * area))
      shares.push(share)
    }
    return {
      conductance: lawCoefficients(RISES, conductances),
      canShare: lawCoefficients(RISES, canShares),
      radiantShare: lawCoefficients(RISES, shares),
    }
  },
})

/** Cooled area of a can: its side and one end. */
export const canArea = (diameter: number, length: number): number => Math.PI * diameter * (length + diameter / 4)
