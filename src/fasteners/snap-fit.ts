import { formula } from '../formula/index.js'

/** Tip deflection over strain times length squared over thickness, by the shape of the hook: from the bending of a cantilever. */
const SHAPE = { uniform: 2 / 3, halfThickness: 4 * (4 * Math.LN2 - 2.5) } as const

/** Force along the joint over the force across it, for a slope under friction: infinite where the slope locks. */
function wedge(angle: number, friction: number): number {
  const tangent = Math.tan(angle)
  return angle < Math.PI / 2 - 1e-12 && friction * tangent < 1 ? (tangent + friction) / (1 - friction * tangent) : Number.POSITIVE_INFINITY
}

/**
 * A cantilever snap hook: strain while it snaps, force to push it in and force to pull it out.
 *
 * Print the hook lying, so that its layers run along it. A hook that stands on the bed breaks between its layers at a fraction of the strain.
 */
export const snapHook = /* @__PURE__ */ formula('fasteners.snapHook', {
  inputs: {
    /** Length of the hook from its root to its catch. */
    length: { kind: 'length', above: 0 },
    /** Thickness at the root, in the direction of bending. */
    thickness: { kind: 'length', above: 0 },
    /** Width. */
    width: { kind: 'length', above: 0 },
    /** Thickness along the hook: uniform, or tapered to half at the catch. */
    shape: { oneOf: ['uniform', 'halfThickness'], default: 'uniform' },
    /** Depth of the catch, by which the hook bends while it snaps. */
    undercut: { kind: 'length', above: 0 },
    /** Secant modulus at that strain. */
    modulus: { kind: 'modulus', above: 0 },
    /** Allowable strain: for one assembly about 0.7 of the strain at yield, for many 0.4. */
    allowableStrain: { kind: 'strain', above: 0 },
    /** Coefficient of friction of hook on catch. */
    friction: { kind: 'ratio', min: 0 },
    /** Slope of the entering face against the direction of assembly. */
    entryAngle: { kind: 'angle', above: 0, below: '90 deg' },
    /** Slope of the holding face against the direction of assembly; 90 degrees does not come apart. */
    holdingAngle: { kind: 'angle', above: 0, max: '90 deg' },
  },
  output: {
    /** Largest strain, at the root, while the hook snaps. */
    strain: 'strain',
    /** Undercut at the allowable strain. */
    allowableUndercut: 'length',
    /** Allowable strain over strain. */
    reserve: 'ratio',
    /** Force that bends the hook aside. */
    deflectionForce: 'force',
    /** Force to push the hook in; infinite where the entering face locks. */
    matingForce: { kind: 'force', infinite: true },
    /** Force to pull the hook out; infinite where the holding face locks. */
    separationForce: { kind: 'force', infinite: true },
    /** Whether the hook survives and can be assembled. */
    state: { oneOf: ['snaps', 'overstrained', 'locks'] },
  },
  equation: [
    'deflectionForce == width * thickness^2 * modulus * strain / (6 * length)',
    'reserve == allowableStrain / strain',
    'allowableUndercut == undercut * allowableStrain / strain',
  ],
  assumes: [
    'rigid counterpart',
    'root that does not yield: a soft root bends along and lowers the strain',
    'fillet at the root of half its thickness or more',
  ],
  source: [
    {
      level: 'published',
      where: "resin makers' design guides of snap joints: y = 0.67 ε l²/h, P = b h² E ε/(6 l), W = P (μ + tan α)/(1 − μ tan α)",
    },
    { level: 'referenceLibrary', where: 'bending of the tapered cantilever integrated along its length' },
  ],
  valid: {
    'length at least five times the thickness (slender hook)': ({ length, thickness }) => length >= 5 * thickness * (1 - 1e-9),
  },
  si: ({ length, thickness, width, shape, undercut, modulus, allowableStrain, friction, entryAngle, holdingAngle }) => {
    const perStrain = (SHAPE[shape] * length * length) / thickness
    const strain = undercut / perStrain
    const deflectionForce = (width * thickness * thickness * modulus * strain) / (6 * length)
    const matingForce = deflectionForce * wedge(entryAngle, friction)
    return {
      strain,
      allowableUndercut: perStrain * allowableStrain,
      reserve: allowableStrain / strain,
      deflectionForce,
      matingForce,
      separationForce: deflectionForce * wedge(holdingAngle, friction),
      state:
        matingForce === Number.POSITIVE_INFINITY
          ? ('locks' as const)
          : strain > allowableStrain
            ? ('overstrained' as const)
            : ('snaps' as const),
    }
  },
})
