import { formula } from '../formula/index.js'
import { CHANGE_SINCE_CURE, CORD_TENSION, POTTED_END } from './bond-inputs.js'
import { bossWallStress } from './press-fit.js'

/** x·cosh(u)/sinh(x) for 0 ≤ u ≤ x, without overflow. */
const evened = (u: number, x: number): number => (x * Math.exp(u - x) * (1 + Math.exp(-2 * u))) / -Math.expm1(-2 * x)

/** sinh(x/2 − u)/sinh(x/2) for 0 ≤ u ≤ x: from 1 at the mouth to −1 at the far end. */
function skew(u: number, x: number): number {
  const from = x / 2 - u
  return (Math.sign(from) * Math.exp(Math.abs(from) - x / 2) * Math.expm1(-2 * Math.abs(from))) / Math.expm1(-x)
}

/**
 * Shear at any place along a cord end or rod glued into a round socket, by its tension and by a change of temperature.
 *
 * `held: 'mouth'` is a socket pushed at the mouth it is loaded from (a ferrule behind a wall); `'farEnd'` a socket pulled at its other end.
 * Shear is positive where the bond holds the cord back. A cord that grows less than its socket loads the far end when heated and the mouth when cooled.
 */
export const socketShear = /* @__PURE__ */ formula('fasteners.socketShear', {
  inputs: {
    ...POTTED_END,
    /** Thermal expansion of the cord along itself; negative for most stretched fibres. */
    cordExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
    /** Thermal expansion of the socket. */
    socketExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
    ...CHANGE_SINCE_CURE,
    /** Place, from the mouth. */
    at: { kind: 'length', min: 0, default: '0 mm' },
  },
  output: {
    /** Average shear on the cord by its tension. */
    averageStress: 'stress',
    /** Shear at that place. */
    stress: 'stress',
    /** Shear at the mouth. */
    mouthStress: 'stress',
    /** Shear at the far end. */
    endStress: 'stress',
    /** Part of the shear at the mouth that comes from temperature; as much the other way at the far end. */
    thermalStress: 'stress',
    /** Length over which the shear falls away from an end. */
    shearLagLength: 'length',
  },
  assumes: ['elastic', 'cord bonds as a solid rod', 'no contraction of the cord', 'free of shear at the temperature of cure'],
  source: [{ level: 'published', where: 'Volkersen 1938 in a round joint; axial shear of a tube of adhesive, any elasticity text' }],
  requires: {
    boreDiameter: { accepts: 'must be larger than the cord', holds: ({ boreDiameter, cordDiameter }) => boreDiameter > cordDiameter },
    at: { accepts: 'must lie within the bond', holds: ({ at, length }) => at <= length * (1 + 1e-12) },
  },
  si: (g) => {
    const softness = 1 / g.cordRigidity + 1 / g.socketRigidity
    const lambda = Math.sqrt(((2 * Math.PI * g.shearModulus) / Math.log(g.boreDiameter / g.cordDiameter)) * softness)
    const x = lambda * g.length
    const place = Math.min(x, lambda * g.at)
    const around = Math.PI * g.cordDiameter
    const averageStress = g.force / (around * g.length)
    const cord = 1 / g.cordRigidity / softness
    /** Shear by the force over its average, so many lag lengths from the mouth. */
    const factor = (s: number) => (g.held === 'mouth' ? evened(x - s, x) : cord * evened(x - s, x) + (1 - cord) * evened(s, x))
    const mismatch = (g.cordExpansion - g.socketExpansion) * g.temperatureChange
    const thermalStress = ((mismatch * lambda) / (softness * around)) * Math.tanh(x / 2)
    return {
      averageStress,
      stress: averageStress * factor(place) + thermalStress * skew(place, x),
      mouthStress: averageStress * factor(0) + thermalStress,
      endStress: averageStress * factor(x) - thermalStress,
      thermalStress,
      shearLagLength: 1 / lambda,
    }
  },
})

/**
 * A cord end or rod glued into a round socket: its highest shear, and the most that length is good for at the temperature of cure.
 *
 * The ends are held as in `socketShear`, which also returns the shear in between and the part by temperature. Subtract that part from the strength.
 */
export const pottedFerrule = /* @__PURE__ */ formula('fasteners.pottedFerrule', {
  inputs: {
    ...POTTED_END,
    /** Shear strength of the adhesive on the cord. */
    shearStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Average shear on the cord. */
    averageStress: 'stress',
    /** Shear at the mouth. */
    mouthStress: 'stress',
    /** Shear at the far end. */
    endStress: 'stress',
    /** Tension at which the highest shear meets the strength: the limit of a brittle bond. */
    elasticLimit: 'force',
    /** Tension at which uniform shear meets the strength: the upper bound for a ductile bond. */
    plasticLimit: 'force',
    /** The elastic limit of an infinitely long bond held the same way. */
    longBondLimit: 'force',
    /** Length over which the shear falls away; beyond some three of them more length adds nothing elastic. */
    shearLagLength: 'length',
  },
  equation: ['averageStress = force / (pi * cordDiameter * length)', 'plasticLimit = shearStrength * pi * cordDiameter * length'],
  assumes: [
    'elastic',
    'cord bonds as a solid rod: slippery or braided fibre holds less, so take a pull test',
    'no contraction of the cord',
  ],
  source: [{ level: 'published', where: 'Volkersen 1938 in a round joint, as fasteners.socketShear' }],
  requires: {
    boreDiameter: { accepts: 'must be larger than the cord', holds: ({ boreDiameter, cordDiameter }) => boreDiameter > cordDiameter },
  },
  si: (g) => {
    const cold = { ...g, force: 1, cordExpansion: 0, socketExpansion: 0, temperatureChange: 0, at: 0 }
    const { averageStress, mouthStress, endStress, shearLagLength } = socketShear.si(cold)
    const cordShare = g.socketRigidity / (g.cordRigidity + g.socketRigidity)
    const longFactor = g.held === 'mouth' ? 1 : Math.max(cordShare, 1 - cordShare)
    return {
      averageStress: g.force * averageStress,
      mouthStress: g.force * mouthStress,
      endStress: g.force * endStress,
      elasticLimit: g.shearStrength / Math.max(mouthStress, endStress),
      plasticLimit: g.shearStrength / averageStress,
      longBondLimit: (Math.PI * g.cordDiameter * g.shearStrength * shearLagLength) / longFactor,
      shearLagLength,
    }
  },
})

/** A cord end spread in a cone of resin: the pull wedges the cone, so that pressure and friction hold it besides the bond. */
export const coneSocket = /* @__PURE__ */ formula('fasteners.coneSocket', {
  inputs: {
    ...CORD_TENSION,
    /** Diameter of the cone at its narrow mouth. */
    mouthDiameter: { kind: 'length', above: 0 },
    /** Length of the cone. */
    length: { kind: 'length', above: 0 },
    /** Half angle of the cone. */
    halfAngle: { kind: 'angle', above: 0, below: '45 deg' },
    /** Coefficient of friction, resin on socket. */
    friction: { kind: 'ratio', min: 0 },
    /** Outer diameter of the socket where it is thinnest against the cone. */
    socketDiameter: { kind: 'length', above: 0 },
  },
  output: {
    /** Largest diameter of the cone. */
    wideDiameter: 'length',
    /** Average pressure of resin on socket. */
    pressure: 'stress',
    /** Shear between cone and socket by friction. */
    frictionStress: 'stress',
    /** Hoop tension of the socket at the bore, average pressure on the mean diameter. */
    hoopStress: 'stress',
    /** Whether the cone stays in when the tension is gone (friction angle above half angle) or comes loose. */
    state: { oneOf: ['staysIn', 'releases'] },
  },
  equation: [
    'wideDiameter = mouthDiameter + 2 * length * tan(halfAngle)',
    'pressure = force / (sin(halfAngle) + friction * cos(halfAngle)) / (pi * (mouthDiameter + wideDiameter) / 2 * length / cos(halfAngle))',
    'frictionStress = friction * pressure',
  ],
  assumes: ['no bond to the socket', 'uniform pressure', 'rigid resin'],
  source: [{ level: 'computed', where: 'balance of a wedge with friction; thick ring after Lamé' }],
  requires: {
    socketDiameter: {
      accepts: 'must be larger than the cone',
      holds: ({ socketDiameter, mouthDiameter, length, halfAngle }) => socketDiameter > mouthDiameter + 2 * length * Math.tan(halfAngle),
    },
  },
  si: ({ force, mouthDiameter, length, halfAngle, friction, socketDiameter }) => {
    const wideDiameter = mouthDiameter + 2 * length * Math.tan(halfAngle)
    const mean = (mouthDiameter + wideDiameter) / 2
    const normal = force / (Math.sin(halfAngle) + friction * Math.cos(halfAngle))
    const pressure = normal / ((Math.PI * mean * length) / Math.cos(halfAngle))
    return {
      wideDiameter,
      pressure,
      frictionStress: friction * pressure,
      hoopStress: bossWallStress.si({ pressure, diameter: mean, bossDiameter: socketDiameter, radius: mean / 2 }).hoopStress,
      state: friction >= Math.tan(halfAngle) ? ('staysIn' as const) : ('releases' as const),
    }
  },
})
