import { formula, property } from '../formula/index.js'

const COS_30 = Math.sqrt(3) / 2

/** Nut factor of steel threads by surface (torque = nut factor × preload × diameter), lubricant and finish named. */
export const nutFactors = {
  /** Black finish, not plated, dry. */
  black: /* @__PURE__ */ property('ratio', {
    typical: 0.3,
    low: 0.2,
    high: 0.4,
    source: { level: 'published', where: 'Budynas & Nisbett, Shigley 9th ed., table 8-15; range from its scatter, table 8-13' },
    conditions: 'steel on steel, dry',
  }),
  /** Zinc plated. */
  zinc: /* @__PURE__ */ property('ratio', {
    typical: 0.2,
    low: 0.16,
    high: 0.26,
    source: { level: 'published', where: 'Shigley 9th ed., table 8-15; range ±30 %, common for torque tightening' },
    conditions: 'steel on steel, as delivered',
  }),
  /** Lubricated. */
  lubricated: /* @__PURE__ */ property('ratio', {
    typical: 0.18,
    low: 0.15,
    high: 0.21,
    source: { level: 'published', where: 'Shigley 9th ed., table 8-15; range from its scatter, table 8-14' },
    conditions: 'oiled steel on steel',
  }),
}

/** Coefficients of friction of steel threads and under heads. */
export const boltFrictions = {
  /** Dry steel on steel. */
  dry: /* @__PURE__ */ property('ratio', {
    typical: 0.2,
    low: 0.15,
    high: 0.25,
    source: { level: 'published', where: 'Shigley 9th ed., table 8-5' },
    conditions: 'steel screw, steel nut, dry',
  }),
  /** Oiled steel on steel. */
  oiled: /* @__PURE__ */ property('ratio', {
    typical: 0.14,
    low: 0.11,
    high: 0.17,
    source: { level: 'published', where: 'Shigley 9th ed., table 8-5' },
    conditions: 'steel screw, steel nut, machine oil',
  }),
}

/** Tightening factor (largest over smallest preload) by the way of tightening. */
export const tighteningFactors = {
  /** Torque wrench. */
  torqueWrench: /* @__PURE__ */ property('ratio', {
    typical: 1.5,
    low: 1.4,
    high: 1.6,
    source: { level: 'memory', where: 'VDI 2230-1, table A8' },
    conditions: 'set by test on the actual joint',
  }),
  /** By feel of the hand, or an impact driver. */
  byHand: /* @__PURE__ */ property('ratio', {
    typical: 3,
    low: 2.5,
    high: 4,
    source: { level: 'memory', where: 'VDI 2230-1, table A8' },
    conditions: 'no measurement of torque',
  }),
}

/**
 * The torque that gives a bolt its preload: part lifts along the thread, part is lost in the thread, part under the turned head.
 *
 * A lock nut's prevailing torque comes on top and gives no preload.
 */
export const tighteningTorque = /* @__PURE__ */ formula('fasteners.tighteningTorque', {
  inputs: {
    /** Preload of the bolt. */
    preload: { kind: 'force', min: 0 },
    /** The thread's sizes, as `metricThread` gives them. */
    thread: {
      fields: {
        /** Nominal diameter. */
        diameter: { kind: 'length', above: 0 },
        /** Pitch (lead of a single-start thread). */
        pitch: { kind: 'length', above: 0 },
        /** Basic pitch diameter. */
        pitchDiameter: { kind: 'length', above: 0 },
      },
    },
    /** Coefficient of friction in the thread. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction under the turned head or nut. */
    headFriction: { kind: 'ratio', min: 0 },
    /** Outer diameter of the bearing ring under the turned head or nut. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Diameter of the hole, the inner edge of that ring. */
    holeDiameter: { kind: 'length', above: 0 },
    /** Prevailing torque of a lock nut. */
    prevailingTorque: { kind: 'torque', min: 0, default: '0 N m' },
  },
  output: {
    /** Torque on the wrench. */
    torque: 'torque',
    /** Part in the thread without prevailing torque: it twists the shank. */
    threadTorque: 'torque',
    /** Part under the head. */
    headTorque: 'torque',
    /** Torque that wants to turn a held nut in its pocket: thread part and prevailing torque. */
    nutTorque: 'torque',
    /** Nut factor of preload and wrench torque without the prevailing torque. */
    nutFactor: 'ratio',
  },
  assumes: ['friction in the thread acts at the pitch diameter, under the head at the mean of ring and hole', 'friction constant'],
  source: [{ level: 'published', where: 'any machine-design text, "power screws" and "bolt torque", such as Shigley 9th ed., eq. 8-26' }],
  requires: {
    bearingDiameter: {
      accepts: 'must be larger than the hole',
      holds: ({ bearingDiameter, holeDiameter }) => bearingDiameter > holeDiameter,
    },
  },
  si: ({ preload, thread, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque }) => {
    const tanLead = thread.pitch / (Math.PI * thread.pitchDiameter)
    const tanFriction = threadFriction / COS_30
    const threadTorque = (preload * (thread.pitchDiameter / 2) * (tanLead + tanFriction)) / (1 - tanLead * tanFriction)
    const headTorque = preload * headFriction * ((bearingDiameter + holeDiameter) / 4)
    const perNewton =
      ((thread.pitchDiameter / 2) * (tanLead + tanFriction)) / (1 - tanLead * tanFriction) +
      (headFriction * (bearingDiameter + holeDiameter)) / 4
    return {
      torque: threadTorque + headTorque + prevailingTorque,
      threadTorque,
      headTorque,
      nutTorque: threadTorque + prevailingTorque,
      nutFactor: perNewton / thread.diameter,
    }
  },
  valid: { 'thread friction below 1': ({ threadFriction }) => threadFriction < 1 },
})

/** The torque for a preload by the short formula of bolt practice, 0.16 pitch + 0.58 pitch diameter × friction; within about 0.3 % of the exact one. */
export const tighteningTorqueShort = /* @__PURE__ */ formula('fasteners.tighteningTorqueShort', {
  inputs: {
    /** Preload of the bolt. */
    preload: { kind: 'force', min: 0 },
    /** Pitch. */
    pitch: { kind: 'length', above: 0 },
    /** Basic pitch diameter. */
    pitchDiameter: { kind: 'length', above: 0 },
    /** Coefficient of friction in the thread. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction under the turned head or nut. */
    headFriction: { kind: 'ratio', min: 0 },
    /** Outer diameter of the bearing ring under the turned head or nut. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Diameter of the hole. */
    holeDiameter: { kind: 'length', above: 0 },
  },
  /** Torque on the wrench. */
  output: 'torque',
  assumes: ['60 degree thread, small lead angle'],
  source: [{ level: 'memory', where: 'VDI 2230-1, equation R13' }],
  valid: { 'friction at most 0.3': ({ threadFriction }) => threadFriction <= 0.3 },
  si: ({ preload, pitch, pitchDiameter, threadFriction, headFriction, bearingDiameter, holeDiameter }) =>
    preload * (0.16 * pitch + 0.58 * pitchDiameter * threadFriction + ((bearingDiameter + holeDiameter) / 4) * headFriction),
})

/** The preload a wrench torque gives, after a lock nut's prevailing torque is taken off; told, not clamped, when nothing is left. */
export const preloadFromTorque = /* @__PURE__ */ formula('fasteners.preloadFromTorque', {
  inputs: {
    /** Torque on the wrench. */
    torque: { kind: 'torque', min: 0 },
    /** The thread's sizes, as `metricThread` gives them. */
    thread: {
      fields: {
        /** Nominal diameter. */
        diameter: { kind: 'length', above: 0 },
        /** Pitch. */
        pitch: { kind: 'length', above: 0 },
        /** Basic pitch diameter. */
        pitchDiameter: { kind: 'length', above: 0 },
      },
    },
    /** Coefficient of friction in the thread. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction under the turned head or nut. */
    headFriction: { kind: 'ratio', min: 0 },
    /** Outer diameter of the bearing ring under the turned head or nut. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Diameter of the hole. */
    holeDiameter: { kind: 'length', above: 0 },
    /** Prevailing torque of a lock nut. */
    prevailingTorque: { kind: 'torque', min: 0, default: '0 N m' },
  },
  output: {
    /** Preload; zero when the prevailing torque takes it all. */
    preload: 'force',
    /** Whether the torque gets past the prevailing torque. */
    state: { oneOf: ['tightened', 'prevailingTorqueNotOvercome'] },
  },
  assumes: ['as tighteningTorque'],
  source: [{ level: 'computed', where: 'fasteners.tighteningTorque solved for the preload' }],
  si: ({ torque, thread, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque }) => {
    const one = { preload: 1, thread, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque: 0 }
    const useful = torque - prevailingTorque
    return {
      preload: useful > 0 ? useful / tighteningTorque.si(one).torque : 0,
      state: useful > 0 ? ('tightened' as const) : ('prevailingTorqueNotOvercome' as const),
    }
  },
})

/** The nut factor of a steel bolt from its friction, taking the mean bearing diameter under the head as 1.25 diameters. */
export const nutFactor = /* @__PURE__ */ formula('fasteners.nutFactor', {
  inputs: {
    /** Nominal diameter. */
    diameter: { kind: 'length', above: 0 },
    /** Mean thread diameter. */
    meanDiameter: { kind: 'length', above: 0 },
    /** Lead. */
    lead: { kind: 'length', above: 0 },
    /** Coefficient of friction in the thread. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction under the head. */
    headFriction: { kind: 'ratio', min: 0 },
  },
  /** Nut factor: torque over preload and diameter. */
  output: 'ratio',
  assumes: ['60 degree thread', 'washer face 1.5 diameters wide, so that its mean diameter is 1.25 diameters'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-26' }],
  si: ({ diameter, meanDiameter, lead, threadFriction, headFriction }) => {
    const tanLead = lead / (Math.PI * meanDiameter)
    return (
      ((meanDiameter / (2 * diameter)) * (tanLead + threadFriction / COS_30)) / (1 - (threadFriction * tanLead) / COS_30) +
      0.625 * headFriction
    )
  },
})

/** The torque for a preload from a nut factor: the rule of thumb for when friction is only known by surface. */
export const torqueFromNutFactor = /* @__PURE__ */ formula('fasteners.torqueFromNutFactor', {
  inputs: {
    /** Nut factor. */
    nutFactor: { kind: 'ratio', above: 0 },
    /** Preload of the bolt. */
    preload: { kind: 'force', min: 0 },
    /** Nominal diameter. */
    diameter: { kind: 'length', above: 0 },
  },
  /** Torque on the wrench. */
  output: 'torque',
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-27' }],
  si: ({ nutFactor, preload, diameter }) => nutFactor * preload * diameter,
})

/** The torque that turns a tightened bolt back; where it is negative the joint loosens by itself. */
export const looseningTorque = /* @__PURE__ */ formula('fasteners.looseningTorque', {
  inputs: {
    /** Preload of the bolt at that moment. */
    preload: { kind: 'force', min: 0 },
    /** Pitch. */
    pitch: { kind: 'length', above: 0 },
    /** Basic pitch diameter. */
    pitchDiameter: { kind: 'length', above: 0 },
    /** Coefficient of friction in the thread; near zero while the joint slips sideways under vibration. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Coefficient of friction under the turned head or nut. */
    headFriction: { kind: 'ratio', min: 0 },
    /** Outer diameter of the bearing ring under the turned head or nut. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Diameter of the hole. */
    holeDiameter: { kind: 'length', above: 0 },
    /** Prevailing torque of a lock nut in the loosening direction. */
    prevailingTorque: { kind: 'torque', min: 0, default: '0 N m' },
  },
  output: {
    /** Torque needed to loosen; negative when it must be held. */
    torque: 'torque',
    /** Whether it stays by itself. */
    state: { oneOf: ['selfHolding', 'selfLoosening'] },
  },
  assumes: ['60 degree thread', 'friction acts against loosening in thread and under the head'],
  source: [{ level: 'published', where: 'any machine-design text, "lowering torque" of power screws' }],
  si: ({ preload, pitch, pitchDiameter, threadFriction, headFriction, bearingDiameter, holeDiameter, prevailingTorque }) => {
    const tanLead = pitch / (Math.PI * pitchDiameter)
    const tanFriction = threadFriction / COS_30
    const torque =
      preload *
        (((pitchDiameter / 2) * (tanFriction - tanLead)) / (1 + tanFriction * tanLead) +
          (headFriction * (bearingDiameter + holeDiameter)) / 4) +
      prevailingTorque
    return { torque, state: torque < 0 ? ('selfLoosening' as const) : ('selfHolding' as const) }
  },
})

/** The highest preload at which tension and the twist of tightening together use a stated share of the bolt's yield strength. */
export const preloadAtUtilisation = /* @__PURE__ */ formula('fasteners.preloadAtUtilisation', {
  inputs: {
    /** The thread's sizes, as `metricThread` gives them. */
    thread: {
      fields: {
        /** Pitch. */
        pitch: { kind: 'length', above: 0 },
        /** Basic pitch diameter. */
        pitchDiameter: { kind: 'length', above: 0 },
        /** Stress area. */
        stressArea: { kind: 'area', above: 0 },
      },
    },
    /** Yield strength of the bolt. */
    yieldStrength: { kind: 'stress', above: 0 },
    /** Coefficient of friction in the thread while tightening. */
    threadFriction: { kind: 'ratio', min: 0 },
    /** Share of the yield strength that is used. */
    utilisation: { kind: 'ratio', above: 0, max: 1, default: 0.9 },
    /** Whether the twist is taken as fully plastic over the section (bolt practice) or elastic (about 8 % less preload). */
    torsion: { oneOf: ['plastic', 'elastic'], default: 'plastic' },
  },
  /** Preload. */
  output: 'force',
  assumes: ['von Mises', 'twist of tightening on the stress diameter'],
  source: [{ level: 'memory', where: 'VDI 2230-1, section 5.5.2 (table of assembly preloads)' }],
  si: ({ thread, yieldStrength, threadFriction, utilisation, torsion }) => {
    const stressDiameter = Math.sqrt((4 * thread.stressArea) / Math.PI)
    const twist =
      ((torsion === 'plastic' ? 1.5 : 2) *
        thread.pitchDiameter *
        (thread.pitch / (Math.PI * thread.pitchDiameter) + threadFriction / COS_30)) /
      stressDiameter
    return (utilisation * yieldStrength * thread.stressArea) / Math.sqrt(1 + 3 * twist * twist)
  },
})

/** The lowest and highest preload one wrench setting gives when friction is only known within a range. */
export const preloadBand = /* @__PURE__ */ formula('fasteners.preloadBand', {
  inputs: {
    /** Torque on the wrench. */
    torque: { kind: 'torque', above: 0 },
    /** The thread's sizes, as `metricThread` gives them. */
    thread: {
      fields: {
        /** Nominal diameter. */
        diameter: { kind: 'length', above: 0 },
        /** Pitch. */
        pitch: { kind: 'length', above: 0 },
        /** Basic pitch diameter. */
        pitchDiameter: { kind: 'length', above: 0 },
      },
    },
    /** Lowest friction, in the thread and under the head alike. */
    lowestFriction: { kind: 'ratio', min: 0 },
    /** Highest friction. */
    highestFriction: { kind: 'ratio', above: 0 },
    /** Error of the wrench and its reading, ± share. */
    wrenchError: { kind: 'ratio', min: 0, below: 1, default: 0.05 },
    /** Outer diameter of the bearing ring under the turned head or nut. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Diameter of the hole. */
    holeDiameter: { kind: 'length', above: 0 },
  },
  output: {
    /** Preload with the highest friction and the wrench low. */
    lowest: 'force',
    /** Preload with the lowest friction and the wrench high. */
    highest: 'force',
    /** Tightening factor: highest over lowest. */
    tighteningFactor: 'ratio',
  },
  assumes: ['friction of thread and head high together or low together'],
  source: [{ level: 'computed', where: 'fasteners.tighteningTorque at the ends of the friction range' }],
  requires: {
    highestFriction: {
      accepts: 'must not be below the lowest',
      holds: ({ lowestFriction, highestFriction }) => highestFriction >= lowestFriction,
    },
  },
  si: ({ torque, thread, lowestFriction, highestFriction, wrenchError, bearingDiameter, holeDiameter }) => {
    const common = { preload: 1, thread, bearingDiameter, holeDiameter, prevailingTorque: 0 }
    const stiff = tighteningTorque.si({ ...common, threadFriction: highestFriction, headFriction: highestFriction }).torque
    const slick = tighteningTorque.si({ ...common, threadFriction: lowestFriction, headFriction: lowestFriction }).torque
    const lowest = (torque * (1 - wrenchError)) / stiff
    const highest = (torque * (1 + wrenchError)) / slick
    return { lowest, highest, tighteningFactor: highest / lowest }
  },
})
