import { formula } from '../formula/index.js'
import { ADHESIVE_SHEAR_MODULUS, BOND_THICKNESS, OVERLAP } from './bond-inputs.js'

/** Longer than this many decay lengths the other end of the lap is not felt, and the hyperbolic functions would only overflow. */
const LONG_LAP = 40

/**
 * Peel and bending of a single lap of two equal parts: the pull is off the middle of each part, so the lap turns, bends the parts and opens at its ends.
 *
 * Most glued laps of prints fail by this peel and not by the shear of `lapShear`. Longer laps, thinner parts and rounded ends lower it; a double lap nearly avoids it.
 */
export const lapPeel = /* @__PURE__ */ formula('fasteners.lapPeel', {
  inputs: {
    /** Pull on the joint. */
    force: { kind: 'force', above: 0 },
    /** Width. */
    width: { kind: 'length', above: 0 },
    ...OVERLAP,
    /** Thickness of each part. */
    thickness: { kind: 'length', above: 0 },
    /** Modulus of each part. */
    modulus: { kind: 'modulus', above: 0 },
    /** Poisson's ratio of each part. */
    poissonRatio: { kind: 'ratio', min: 0, below: 0.5 },
    ...BOND_THICKNESS,
    /** Modulus of the adhesive, across the bond. */
    bondModulus: { kind: 'modulus', above: 0 },
    ...ADHESIVE_SHEAR_MODULUS,
    /** Length of each part from the lap to where it can turn freely. Default: long parts. */
    freeLength: { kind: 'length', above: 0, optional: true },
  },
  output: {
    /** Moment at the end of the lap over that of a rigid lap, force times half a thickness. */
    momentFactor: 'ratio',
    /** Moment in each part at the end of the lap. */
    edgeMoment: 'torque',
    /** Largest peel stress, across the bond at its ends. */
    peelStress: 'stress',
    /** Largest shear stress of the bond, bending of the parts included. */
    shearStress: 'stress',
    /** Largest stress of each part, tension and bending at the end of the lap. */
    partStress: 'stress',
  },
  equation: ['edgeMoment == momentFactor * force * thickness / 2', 'partStress == force / (width * thickness) * (1 + 3 * momentFactor)'],
  assumes: [
    'elastic, equal parts of one material, wide compared with their thickness',
    'peel and shear constant through the adhesive',
    'square ends: a fillet of adhesive lowers both stresses',
  ],
  source: [
    { level: 'unverified', where: 'Goland & Reissner 1944, The stresses in cemented joints' },
    { level: 'referenceLibrary', where: 'two rows of beam elements on adhesive springs in matrix form' },
  ],
  valid: {
    'adhesive at most a tenth of the thickness of the parts': ({ bondThickness, thickness }) =>
      bondThickness <= 0.1 * thickness * (1 + 1e-9),
  },
  si: ({ force, width, overlap, thickness: t, modulus, poissonRatio, bondThickness, bondModulus, shearModulus, freeLength }) => {
    const pull = force / width
    const c = overlap / 2
    const stretch = modulus / (1 - poissonRatio * poissonRatio)
    const bend = (stretch * t ** 3) / 12
    // The free parts bend as tie-beams; the lap is eight times as stiff.
    const u = Math.sqrt(pull / bend)
    const held = freeLength === undefined ? 1 : Math.tanh(u * freeLength)
    const momentFactor = 1 / (1 + (Math.sqrt(8) * Math.tanh((u * c) / Math.sqrt(8))) / held)
    const moment = (momentFactor * pull * t) / 2
    const across = (moment * u) / held
    // Peel as of two beams on a bed of adhesive, σ = A cosh βx cos βx + B sinh βx sin βx; all divided by e^βc/2.
    const beta = (bondModulus / (2 * bondThickness * bend)) ** 0.25
    const x = beta * c
    let peelStress = beta * (beta * moment + across)
    if (x < LONG_LAP) {
      const [ch, sh] = [1 + Math.exp(-2 * x), 1 - Math.exp(-2 * x)]
      const [f, g] = [ch * Math.cos(x), sh * Math.sin(x)]
      const [fSlope, gSlope] = [sh * Math.cos(x) - ch * Math.sin(x), ch * Math.sin(x) + sh * Math.cos(x)]
      const byMoment = beta * beta * moment
      const byShear = -beta * across
      const whole = f * gSlope - g * fSlope
      const a = (byMoment * fSlope - byShear * f) / whole
      const b = (byMoment * gSlope - byShear * g) / whole
      peelStress = a * f + b * g
    }
    const shear = Math.sqrt((8 * shearModulus * t) / (stretch * bondThickness)) * (c / t)
    return {
      momentFactor,
      edgeMoment: moment * width,
      peelStress,
      shearStress: (pull / (8 * c)) * ((shear * (1 + 3 * momentFactor)) / Math.tanh(shear) + 3 * (1 - momentFactor)),
      partStress: (pull / t) * (1 + 3 * momentFactor),
    }
  },
})
