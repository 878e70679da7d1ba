import { formula } from '../formula/index.js'
import { chebyshev } from '../numeric/index.js'
import { lawPlace } from './chebyshev-law.js'
import { AIR_PRESSURE, MOUNT_AIR } from './film-inputs.js'
import { FILMS } from './plate-law.js'
import { surfaceCoefficient } from './surface-coefficient.js'

/** A film that moves by less than this part of itself has settled. */
const SETTLED = 1e-8
const MAX_ROUNDS = 60

/** Finds the film that belongs to the surface temperature which it gives. Aitken's step between plain rounds. */
export function settledFilm(start: number, next: (film: number) => number): number {
  let film = start
  for (let k = 0; k < MAX_ROUNDS; k++) {
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
export const AIR = {
  ...MOUNT_AIR,
  /** Temperature of what the surfaces see. */
  radiant: { kind: 'temperature', min: 0 },
  /** Speed of the air over the surfaces. */
  airSpeed: { kind: 'velocity', min: 0, default: '0 m/s' },
  ...AIR_PRESSURE,
  /** Factor on the films, such as that of a calibration. */
  factor: { kind: 'ratio', above: 0, default: 1 },
} as const

/** A motor's plate as inputs of its balance. */
export const MOUNT = {
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
} as const

/** A motor's plate in its air, SI. */
interface PlateInAir {
  readonly ring: readonly number[]
  readonly mean: readonly number[]
  readonly contact: number
  readonly height: number
  readonly emissivity: number
  readonly air: number
  readonly radiant: number
  readonly airSpeed: number
  readonly pressure: number
  readonly factor: number
}

/** Film on a plate whose mounting face has a temperature, the share of radiation in it, and the resistance from that face to the air. */
export function plateBalance(x: PlateInAir, mount: number, start: number) {
  const { ring, mean, contact, height, emissivity, air, radiant, airSpeed, pressure, factor } = x
  let share = 0
  let resistance = 0
  const film = settledFilm(start, (guess) => {
    const place = lawPlace(FILMS, guess)
    resistance = contact + Math.exp(chebyshev(ring, place))
    const far = air + share * (radiant - air)
    const temperature = far + ((mount - far) * Math.exp(chebyshev(mean, place))) / resistance
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
  return { film, share, resistance }
}

/** Film from which the balance of one temperature starts, W/(m² K). */
const START = 10

/**
 * Film on the faces of a motor's plate, the heat that the plate sheds and the mean of its ring, for a temperature of the mounting face. `mountLaw` tabulates
 * the same balance.
 */
export const mountFilm = /* @__PURE__ */ formula('thermal.mountFilm', {
  title: 'heat transfer of a motor mount',
  inputs: {
    ...MOUNT,
    /** Temperature of the mounting face. */
    mount: { kind: 'temperature', above: 0 },
  },
  output: {
    /** Coefficient on both faces, film and radiation together. */
    film: 'heatTransferCoefficient',
    /** From the mounting face through the plate to the air. */
    heat: 'power',
    /** Mean of the plate's ring, below the contact. */
    ring: 'temperature',
    /** What the plate cools towards: the air, moved towards the surroundings by the share of radiation. */
    far: 'temperature',
  },
  assumes: ['plate upright, the same film on both faces, at the mean temperature of the plate'],
  requires: {
    mount: { accepts: 'must be above the air', holds: ({ mount, air }) => mount > air },
  },
  source: [{ level: 'computed', where: 'heat balance of plate and film, as thermal.mountLaw' }],
  si: ({ mount, ...plate }) => {
    const { film, share, resistance } = plateBalance(plate, mount, START)
    const far = plate.air + share * (plate.radiant - plate.air)
    const heat = (mount - far) / resistance
    return { film, heat, ring: mount - plate.contact * heat, far }
  },
})
