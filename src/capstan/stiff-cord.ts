import { formula } from '../formula/index.js'
import { increasingRoot } from './branch.js'
import { SLACK_END } from './cord-inputs.js'
import { CENTRE_LINE_RADIUS, WRAP_ANGLE } from './inputs.js'

/**
 * Taut tension that a cord with bending stiffness can hold: it lifts off before the ends of the geometric wrap, which costs holding when
 * the slack tension is small. For braids the loss is negligible, for wire rope on a small pinion it is not.
 */
export const stiffCordTautTension = /* @__PURE__ */ formula('capstan.stiffCordTautTension', {
  inputs: {
    ...SLACK_END,
    /** Coefficient of friction, cord on drum. */
    friction: { kind: 'ratio', min: 0 },
    /** Geometric angle of contact, tangent point to tangent point of a limp cord. */
    wrapAngle: { kind: 'angle', above: 0 },
    /** Elastic bending rigidity of the cord. */
    bendingRigidity: { kind: 'bendingRigidity', min: 0 },
    ...CENTRE_LINE_RADIUS,
  },
  requires: {
    slackTension: {
      accepts: 'must exceed half of bending rigidity over radius squared, or the cord does not follow the drum',
      holds: ({ slackTension, bendingRigidity, centreLineRadius }) =>
        bendingRigidity / (2 * slackTension * centreLineRadius * centreLineRadius) < 1,
    },
  },
  output: {
    /** Tension at the taut end, with the lift-off angles and the reactions at the lift-off points. */
    tautTension: 'force',
    /** The same by the second-order formula. */
    tautTensionSecondOrder: 'force',
    /** Angle lost at the slack end. */
    slackLiftOff: 'angle',
    /** Angle lost at the taut end. */
    tautLiftOff: 'angle',
  },
  assumes: ['long free spans', 'linear elastic bending, no bending hysteresis', 'Coulomb friction also at the lift-off reactions'],
  valid: {
    'bending rigidity over 2 T R² below 0.1': ({ slackTension, bendingRigidity, centreLineRadius }) =>
      bendingRigidity / (2 * slackTension * centreLineRadius * centreLineRadius) < 0.1,
    'wrap longer than the two lift-off angles': ({ wrapAngle }, { slackLiftOff, tautLiftOff }) => wrapAngle > slackLiftOff + tautLiftOff,
  },
  source: [
    { level: 'computed', where: 'invariant T + M²/(2EI) of the planar elastica; compare Singh, J. Elasticity 151 (2022) 321 (abstract)' },
  ],
  si: ({ slackTension: T0, friction: mu, wrapAngle, bendingRigidity: EI, centreLineRadius: R }) => {
    const stiff = EI / (2 * R * R)
    const limp = T0 * Math.exp(mu * wrapAngle)
    // acos(1 - stiff/T), exact also where it is small.
    const liftOff = (T: number) => 2 * Math.asin(Math.sqrt(stiff / (2 * T)))
    const psi0 = liftOff(T0)
    // Logarithms of both sides; below `min` friction at the taut lift-off point would hold all by itself.
    const start = Math.log(T0 * (Math.cos(psi0) + mu * Math.sin(psi0))) + mu * (wrapAngle - psi0)
    const min = stiff * (1 + mu * mu + mu * Math.sqrt(1 + mu * mu))
    const full = (T: number) => {
      const sine = Math.sqrt(stiff * (2 * T - stiff))
      const held = T - stiff - mu * sine
      return { value: Math.log(held) + mu * liftOff(T) - start, slope: (1 - (mu * stiff) / sine) / held - (mu * stiff) / (T * sine) }
    }
    let high = Math.max(limp, 2 * min)
    while (full(high).value < 0) high *= 2
    const taut = stiff === 0 ? limp : increasingRoot(full, high, min, high, 1e-9 * high)
    const bend = (1 + mu * mu) * stiff
    const second = increasingRoot(
      (T) => ({ value: Math.log(T / limp) + bend * (1 / T0 - 1 / T), slope: 1 / T + bend / (T * T) }),
      limp,
      T0,
      limp,
      1e-9 * limp,
    )
    return { tautTension: taut, tautTensionSecondOrder: second, slackLiftOff: psi0, tautLiftOff: liftOff(taut) }
  },
})

/**
 * Taut tension of a wrap under the fibre friction law: friction per length grows with a power of the normal load per length, so that the
 * effective coefficient falls as the load rises. Exponent 1 is Coulomb friction.
 */
export const fibreTautTension = /* @__PURE__ */ formula('capstan.fibreTautTension', {
  inputs: {
    ...SLACK_END,
    /** Factor of the law at one newton per metre of normal load (friction per length = factor × (normal load per length in N/m)^exponent). */
    frictionFactor: { kind: 'ratio', above: 0 },
    /** Exponent of the law. */
    exponent: { kind: 'ratio', above: 0, max: 1 },
    ...CENTRE_LINE_RADIUS,
    ...WRAP_ANGLE,
  },
  output: {
    /** Tension at the taut end when the cord is about to slip. */
    tautTension: 'force',
    /** Coulomb coefficient that would hold the same ratio over this arc. */
    equivalentFriction: 'ratio',
  },
  assumes: ['cord perfectly flexible and massless', 'the fibre law holds over the whole range of pressure along the arc'],
  valid: { 'exponent of 0.67 to 1, as reported for fibres': ({ exponent }) => exponent >= 0.66 },
  source: [{ level: 'unverified', where: 'Howell, J. Textile Inst. 44 (1953) T359 and 45 (1954) T575' }],
  si: ({ slackTension: Ts, frictionFactor: a, exponent: n, centreLineRadius: R, wrapAngle }) => {
    const m = 1 - n
    // (T/Ts)^m = 1 + m·g; log1p keeps the limit m → 0 exact.
    const g = a * (R / Ts) ** m * wrapAngle
    const lnRatio = m === 0 ? g : Math.log1p(m * g) / m
    return { tautTension: Ts * Math.exp(lnRatio), equivalentFriction: wrapAngle > 0 ? lnRatio / wrapAngle : a * (R / Ts) ** m }
  },
})
