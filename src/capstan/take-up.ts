import { formula } from '../formula/index.js'
import { BEDDED_RIGIDITY, CORD_RIGIDITY } from './cord-inputs.js'
import { CENTRE_DISTANCE, SPAN, WARMING } from './inputs.js'

const WORKING_LENGTH = {
  /** Cord length between the anchors. */
  workingLength: { kind: 'length', above: 0 },
} as const

/** Take-up a tensioner must have, term by term: elastic stretch, bedding-in, creep, slack of assembly, and heat with its sign. */
export const takeUp = /* @__PURE__ */ formula('capstan.takeUp', {
  title: 'take-up of the tensioner',
  inputs: {
    ...WORKING_LENGTH,
    /** Tension to set. */
    pretension: { kind: 'force', min: 0 },
    ...BEDDED_RIGIDITY,
    /** Constructional stretch that comes out while the cord beds in. */
    beddingStrain: { kind: 'strain', min: 0 },
    /** Creep of the cord over the life between adjustments. */
    creepStrain: { kind: 'strain', min: 0 },
    /** Loose cord that assembly leaves. */
    slack: { kind: 'length', min: 0 },
    ...WARMING,
  },
  output: {
    /** All terms together when the drive gets colder or warmer so that the cord loosens; heat that tightens it is not subtracted. */
    total: 'length',
    /** Elastic stretch to the pretension. */
    elastic: 'length',
    /** Bedding-in. */
    bedding: 'length',
    /** Creep. */
    creep: 'length',
    /** Slack of assembly. */
    slack: 'length',
    /** Frame growth less cord growth: positive tightens the cord, negative must be taken up. */
    heat: 'length',
  },
  equation: [
    'elastic = workingLength * pretension / axialRigidity',
    'bedding = workingLength * beddingStrain',
    'creep = workingLength * creepStrain',
    'heat = workingLength * temperatureRise * (frameExpansion - cordExpansion)',
    'total = elastic + bedding + creep + slack + max(0 m, -heat)',
  ],
  assumes: ['frame rigid', 'frame and cord at one temperature'],
  source: [{ level: 'computed', where: 'sum of elongations over the cord length' }],
  si: ({
    workingLength: l,
    pretension,
    axialRigidity,
    beddingStrain,
    creepStrain,
    slack,
    temperatureRise,
    frameExpansion,
    cordExpansion,
  }) => {
    const elastic = (l * pretension) / axialRigidity
    const bedding = l * beddingStrain
    const creep = l * creepStrain
    const heat = l * temperatureRise * (frameExpansion - cordExpansion)
    return { total: elastic + bedding + creep + slack + Math.max(0, -heat), elastic, bedding, creep, slack, heat }
  },
})

/** Tension that a change of temperature adds to a cord at fixed centres. A printed frame with a polymer cord tightens when warm, by much of the pretension. */
export const thermalTension = /* @__PURE__ */ formula('capstan.thermalTension', {
  title: 'change of tension with temperature',
  inputs: {
    ...CORD_RIGIDITY,
    ...WARMING,
  },
  /** Change of tension: positive when the frame outgrows the cord. */
  output: 'force',
  equation: ['result = axialRigidity * temperatureRise * (frameExpansion - cordExpansion)'],
  assumes: ['frame rigid: a compliant frame takes part of it', 'frame and cord or belt at one temperature', 'elastic, no relaxation'],
  source: [{ level: 'computed', where: 'thermal strain difference times axial rigidity' }],
  si: ({ axialRigidity, temperatureRise, frameExpansion, cordExpansion }) =>
    axialRigidity * temperatureRise * (frameExpansion - cordExpansion),
})

/** Cord length that a tensioner takes up per travel of its slide, by way of tensioning. */
export const tensionerTakeUp = /* @__PURE__ */ formula('capstan.tensionerTakeUp', {
  inputs: {
    /**
     * Where the slide acts: pulls one cord end (`endPull`); presses an idler into the middle of a span (`spanIdler`); carries an idler between
     * two parallel strands (`returnIdler`); moves the pinion away (`centreDistance`); turns a split drum half against the other (`splitDrum`).
     */
    method: { oneOf: ['endPull', 'spanIdler', 'returnIdler', 'centreDistance', 'splitDrum'] },
    /** Travel of the slide, or of the rim of the split drum. */
    travel: { kind: 'length', min: 0 },
    ...SPAN,
    ...CENTRE_DISTANCE,
  },
  output: {
    /** Loop length taken up. */
    takeUp: 'length',
    /** Take-up per further travel at this position. */
    gain: 'ratio',
  },
  assumes: ['idler in the middle of a straight span and pressed square to it', 'return idler between parallel strands'],
  source: [{ level: 'computed', where: 'change of polygon length with the position of the slide' }],
  si: ({ method, travel: x, span, centreDistance }) => {
    const half = span / 2
    const slant = Math.sqrt(half * half + x * x)
    const perCentre = (2 * span) / centreDistance
    // 2·(slant − half) without cancellation for small travel.
    const takeUp =
      method === 'spanIdler'
        ? (2 * x * x) / (slant + half)
        : method === 'returnIdler'
          ? 2 * x
          : method === 'centreDistance'
            ? perCentre * x
            : x
    const gain = method === 'spanIdler' ? (2 * x) / slant : method === 'returnIdler' ? 2 : method === 'centreDistance' ? perCentre : 1
    return { takeUp, gain }
  },
})

/** Change of pretension per turn of the tensioner's screw: how finely the tension can be set. */
export const tensionPerScrewTurn = /* @__PURE__ */ formula('capstan.tensionPerScrewTurn', {
  inputs: {
    /** Advance of the screw per turn. */
    lead: { kind: 'length', above: 0 },
    /** Take-up per travel of the slide. */
    gain: { kind: 'ratio', above: 0 },
    ...WORKING_LENGTH,
    ...CORD_RIGIDITY,
  },
  /** Tension gained per full turn. */
  output: 'force',
  equation: ['result = axialRigidity * lead * gain / workingLength'],
  assumes: ['the tension evens out along the whole cord: turn the joint back and forth while setting', 'frame rigid'],
  source: [{ level: 'computed', where: "Hooke's law over the working length" }],
  si: ({ lead, gain, workingLength, axialRigidity }) => (axialRigidity * lead * gain) / workingLength,
})
