import { formula } from '../formula/index.js'
import { bossWallStress } from './press-fit.js'

/** x·coth(x), which is 1 at 0. */
const xCothX = (x: number): number => (x === 0 ? 1 : x / Math.tanh(x))

/**
 * Shear along a glued lap: it peaks at the ends, more so when the parts are soft or the bond stiff and long.
 *
 * `at` runs from the middle of the lap: negative towards the end where the inner part stops, positive towards the end where the outer
 * part stops. Pulled apart at both ends. A double lap has an outer part on each side.
 */
export const lapShear = /* @__PURE__ */ formula('fasteners.lapShear', {
  inputs: {
    /** Force of the joint. */
    force: 'force',
    /** Width. */
    width: { kind: 'length', above: 0 },
    /** Length of the lap. */
    overlap: { kind: 'length', above: 0 },
    /** Single or double lap. */
    lap: { oneOf: ['single', 'double'] },
    /** Inner part (either one of a single lap). */
    inner: {
      fields: {
        /** Thickness. */
        thickness: { kind: 'length', above: 0 },
        /** Modulus along the joint. */
        modulus: { kind: 'modulus', above: 0 },
        /** Thermal expansion. */
        thermalExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
      },
    },
    /** Outer part, each. */
    outer: {
      fields: {
        /** Thickness. */
        thickness: { kind: 'length', above: 0 },
        /** Modulus along the joint. */
        modulus: { kind: 'modulus', above: 0 },
        /** Thermal expansion. */
        thermalExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
      },
    },
    /** Thickness of the adhesive. */
    bondThickness: { kind: 'length', above: 0 },
    /** Shear modulus of the adhesive. */
    shearModulus: { kind: 'modulus', above: 0 },
    /** Temperature minus temperature of cure. */
    temperatureChange: { kind: 'temperatureDifference', default: '0 K' },
    /** Place, from the middle. */
    at: { kind: 'length', default: '0 mm' },
  },
  output: {
    /** Average shear by the force. */
    averageStress: 'stress',
    /** Shear at the place asked, by force and temperature. */
    stress: 'stress',
    /** Shear at the end where the inner part stops. */
    innerEndStress: 'stress',
    /** Shear at the end where the outer part stops. */
    outerEndStress: 'stress',
    /** Part of the outer end's shear that comes from temperature. */
    thermalEndStress: 'stress',
    /** Length over which the shear falls away from an end; more than some three of them add nothing. */
    shearLagLength: 'length',
  },
  assumes: [
    'elastic',
    'no bending and no peel: the true peak is worse, so read it as the least severe',
    'shear constant through the adhesive',
  ],
  source: [
    {
      level: 'published',
      where: 'Volkersen 1938; Shigley 9th ed., section 9-9 and problem 9-35 of its double lap with temperature (from memory)',
    },
  ],
  requires: { at: { accepts: 'must lie within the lap', holds: ({ at, overlap }) => Math.abs(at) <= (overlap / 2) * (1 + 1e-12) } },
  si: ({ force, width, overlap, lap, inner, outer, bondThickness, shearModulus, temperatureChange, at }) => {
    const sides = lap === 'double' ? 2 : 1
    const innerRigidity = (inner.modulus * inner.thickness) / sides
    const outerRigidity = outer.modulus * outer.thickness
    const softness = 1 / innerRigidity + 1 / outerRigidity
    const w = Math.sqrt((shearModulus / bondThickness) * softness)
    const half = (w * overlap) / 2
    const averageStress = force / sides / (width * overlap)
    const even = averageStress * xCothX(half)
    const odd = averageStress * half * Math.tanh(half) * ((outerRigidity - innerRigidity) / (outerRigidity + innerRigidity))
    const thermal = (((inner.thermalExpansion - outer.thermalExpansion) * temperatureChange * w) / softness) * Math.tanh(half)
    const shape = Math.exp(Math.abs(w * at) - half)
    const fall = Math.exp(-2 * Math.abs(w * at))
    const cosh = (shape * (1 + fall)) / (1 + Math.exp(-2 * half))
    const sinh = half === 0 ? 0 : (Math.sign(at) * shape * (1 - fall)) / (1 - Math.exp(-2 * half))
    return {
      averageStress,
      stress: even * cosh + (odd + thermal) * sinh,
      innerEndStress: even - odd - thermal,
      outerEndStress: even + odd + thermal,
      thermalEndStress: thermal,
      shearLagLength: 1 / w,
    }
  },
})

/**
 * A cord end or rod glued into a round socket: shear along the bond, and the most that length is good for.
 *
 * `held: 'mouth'` is a socket pushed at the mouth it is loaded from (a ferrule behind a wall); `'farEnd'` a socket pulled at its other end.
 */
export const pottedFerrule = /* @__PURE__ */ formula('fasteners.pottedFerrule', {
  inputs: {
    /** Tension of the cord. */
    force: { kind: 'force', min: 0 },
    /** Diameter of the cord. */
    cordDiameter: { kind: 'length', above: 0 },
    /** Bore of the socket. */
    boreDiameter: { kind: 'length', above: 0 },
    /** Bonded length. */
    length: { kind: 'length', above: 0 },
    /** Force per strain of the cord. */
    cordRigidity: { kind: 'axialRigidity', above: 0 },
    /** Force per strain of the socket's wall; give a huge one for a rigid socket. */
    socketRigidity: { kind: 'axialRigidity', above: 0 },
    /** Shear modulus of the adhesive. */
    shearModulus: { kind: 'modulus', above: 0 },
    /** Shear strength of the adhesive on the cord. */
    shearStrength: { kind: 'stress', above: 0 },
    /** Where the socket is held. */
    held: { oneOf: ['mouth', 'farEnd'] },
  },
  output: {
    /** Average shear on the cord. */
    averageStress: 'stress',
    /** Shear at the mouth. */
    mouthStress: 'stress',
    /** Shear at the far end. */
    endStress: 'stress',
    /** Tension at which the highest shear meets the strength: what a brittle bond holds. */
    elasticLimit: 'force',
    /** Tension at even shear at the strength: what a ductile bond would hold at best. */
    plasticLimit: 'force',
    /** The elastic limit of an endlessly long bond held the same way. */
    longBondLimit: 'force',
    /** Length over which the shear falls away; beyond some three of them more length adds nothing elastic. */
    shearLagLength: 'length',
  },
  assumes: [
    'elastic',
    'cord bonds as a solid rod: slippery or braided fibre holds less, so take a pull test',
    'no contraction of the cord',
  ],
  source: [{ level: 'published', where: 'Volkersen 1938 in a round joint; axial shear of a tube of adhesive, any elasticity text' }],
  requires: {
    boreDiameter: { accepts: 'must be larger than the cord', holds: ({ boreDiameter, cordDiameter }) => boreDiameter > cordDiameter },
  },
  si: ({ force, cordDiameter, boreDiameter, length, cordRigidity, socketRigidity, shearModulus, shearStrength, held }) => {
    const perLength = (2 * Math.PI * shearModulus) / Math.log(boreDiameter / cordDiameter)
    const softness = 1 / cordRigidity + 1 / socketRigidity
    const lambda = Math.sqrt(perLength * softness)
    const x = lambda * length
    const area = Math.PI * cordDiameter * length
    const averageStress = force / area
    const cord = 1 / cordRigidity / softness
    const socket = 1 - cord
    const coth = xCothX(x)
    // x / sinh(x) without overflow.
    const overSinh = x === 0 ? 1 : (2 * x * Math.exp(-x)) / -Math.expm1(-2 * x)
    const mouthFactor = held === 'mouth' ? coth : cord * coth + socket * overSinh
    const endFactor = held === 'mouth' ? overSinh : cord * overSinh + socket * coth
    const peak = Math.max(mouthFactor, endFactor)
    const longFactor = held === 'mouth' ? 1 : Math.max(cord, socket)
    return {
      averageStress,
      mouthStress: averageStress * mouthFactor,
      endStress: averageStress * endFactor,
      elasticLimit: (shearStrength * area) / peak,
      plasticLimit: shearStrength * area,
      longBondLimit: (Math.PI * cordDiameter * shearStrength) / (lambda * longFactor),
      shearLagLength: 1 / lambda,
    }
  },
})

/** A cord end spread in a cone of resin: the pull wedges the cone, so that pressure and friction hold it besides the bond. */
export const coneSocket = /* @__PURE__ */ formula('fasteners.coneSocket', {
  inputs: {
    /** Tension of the cord. */
    force: { kind: 'force', min: 0 },
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
  assumes: ['no bond to the socket', 'even pressure', 'rigid resin'],
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
