import { formula } from '../formula/index.js'
import { lawCoefficients, lawRange } from './chebyshev-law.js'
import { AIR, MOUNT, plateBalance, settledFilm } from './mount-film.js'
import { surfaceCoefficient } from './surface-coefficient.js'

/** Rises of a mounting face over the air for which laws are tabulated, K. */
export const RISES = /* @__PURE__ */ lawRange(0.01, 450, 12)

/**
 * Law of a mount: conductance from the mounting face of a motor to the air, over the rise of that face from 0.01 to 450 K.
 *
 * The film belongs to the mean temperature of the plate, which a printed plate has far below its hot ring. The law is within 0.1 % of that balance.
 */
export const mountLaw = /* @__PURE__ */ formula('thermal.mountLaw', {
  title: 'conductance of a motor mount over its temperature',
  inputs: MOUNT,
  output: {
    /** Coefficients of the logarithm of the conductance, W/K. */
    conductance: { list: 'ratio' },
    /** Coefficients of the share that radiation has in the film. */
    radiantShare: { list: 'ratio' },
  },
  assumes: ['plate upright, the same film on both faces, at the mean temperature of the plate'],
  source: [{ level: 'computed', where: 'heat balance of plate and film at 12 Chebyshev nodes' }],
  si: (mount) => {
    const conductances: number[] = []
    const shares: number[] = []
    let film = 10
    for (const rise of RISES.nodes) {
      const { film: settled, resistance, share } = plateBalance(mount, mount.air + rise, film)
      film = settled
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
  title: 'conductance of a motor can over its temperature',
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
