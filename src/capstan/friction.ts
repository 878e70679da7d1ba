import { formula } from '../formula/index.js'

/** Tension left at the slack end of a cord wrapped on a drum, on the verge of slipping (belt friction). */
export const slackTension = /* @__PURE__ */ formula('capstan.slackTension', {
  inputs: {
    /** Tension at the taut end. */
    load: { kind: 'force', min: 0 },
    /** Coefficient of friction, cord on drum. */
    friction: { kind: 'ratio', min: 0 },
    /** Total angle of contact. */
    wrapAngle: { kind: 'angle', min: 0 },
  },
  /** Tension at the slack end. */
  output: 'force',
  assumes: ['cord perfectly flexible and massless', 'Coulomb friction, constant along the arc', 'slip impends along the whole arc'],
  source: [{ level: 'published', where: 'Euler 1769; Eytelwein 1808; any statics text, "belt friction"' }],
  si: ({ load, friction, wrapAngle }) => load * Math.exp(-friction * wrapAngle),
})
