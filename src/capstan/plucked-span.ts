import { formula } from '../formula/index.js'

const PLUCKED_SPAN = {
  /** Free length of the span, between its tangent points. */
  span: { kind: 'length', above: 0 },
} as const

const SPAN = {
  ...PLUCKED_SPAN,
  /** Mass of the belt or cord over its length. */
  massPerLength: { kind: 'massPerLength', above: 0 },
} as const

/** Pitch of a plucked span of a belt or cord: the lowest of its natural frequencies. */
export const spanPitch = /* @__PURE__ */ formula('capstan.spanPitch', {
  inputs: {
    ...SPAN,
    /** Tension of the span. */
    tension: { kind: 'force', min: 0 },
  },
  output: 'frequency',
  equation: ['result = sqrt(tension / massPerLength) / (2 * span)'],
  assumes: ['a limp span between ends that stand still: a stiff belt sounds higher, the more so the shorter and looser it is'],
  source: [{ level: 'commonPractice', where: 'lowest mode of a stretched string' }],
  si: ({ span, massPerLength, tension }) => Math.sqrt(tension / massPerLength) / (2 * span),
})

/** Tension of a span of a belt or cord from the pitch that it sounds when plucked. */
export const tensionFromPitch = /* @__PURE__ */ formula('capstan.tensionFromPitch', {
  inputs: {
    ...SPAN,
    /** Pitch that is heard or recorded. */
    pitch: { kind: 'frequency', min: 0 },
  },
  output: 'force',
  equation: ['result = 4 * massPerLength * (span * pitch)^2'],
  assumes: ['a limp span between ends that stand still: a stiff belt shows more than its tension'],
  source: [{ level: 'commonPractice', where: 'lowest mode of a stretched string' }],
  si: ({ span, massPerLength, pitch }) => 4 * massPerLength * (span * pitch) ** 2,
})

/** Force that pushes the middle of a tensioned span sideways by a deflection, axes held. */
export const spanSideForce = /* @__PURE__ */ formula('capstan.spanSideForce', {
  inputs: {
    ...PLUCKED_SPAN,
    /** Tension of the span at rest. */
    tension: { kind: 'force', min: 0 },
    /** Deflection of its middle. */
    deflection: { kind: 'length', min: 0 },
    /** Axial rigidity EA of the belt or cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
  },
  output: {
    /** Force across the span at its middle. */
    force: 'force',
    /** Tension while it is pushed. */
    tension: 'force',
  },
  equation: [
    'half = sqrt((span / 2)^2 + deflection^2)',
    'pushed = tension + axialRigidity * (2 * half / span - 1)',
    'force = 2 * pushed * deflection / half',
  ],
  assumes: ['a limp span that slides at neither end', 'the other span does not give'],
  source: [{ level: 'computed', where: 'balance of both halves of the span at its middle' }],
  si: ({ span, tension, deflection, axialRigidity }) => {
    const half = Math.hypot(span / 2, deflection)
    const pushed = tension + axialRigidity * ((2 * half) / span - 1)
    return { force: (2 * pushed * deflection) / half, tension: pushed }
  },
})
