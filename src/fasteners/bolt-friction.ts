import { property } from '../formula/index.js'

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
    source: { level: 'unverified', where: 'VDI 2230-1, table A8' },
    conditions: 'set by test on the actual joint',
  }),
  /** By feel of the hand, or an impact driver. */
  byHand: /* @__PURE__ */ property('ratio', {
    typical: 3,
    low: 2.5,
    high: 4,
    source: { level: 'unverified', where: 'VDI 2230-1, table A8' },
    conditions: 'no measurement of torque',
  }),
}
