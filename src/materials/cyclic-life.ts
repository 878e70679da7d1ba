import { formula } from '../formula/index.js'

/**
 * Number of load cycles a printed part withstands, from its normalised S-N line: the inverse of `fatigueFactor`.
 * Stress is divided by the static strength of the same print, direction and temperature, on which the lines of prints collapse.
 */
export const printLife = /* @__PURE__ */ formula('materials.printLife', {
  title: 'load cycles of a printed part',
  inputs: {
    /** Largest stress of the cycle. */
    largest: { kind: 'stress', above: 0 },
    /** Static strength in the direction, at the temperature and water content of the part. */
    strength: { kind: 'stress', above: 0 },
    /** Share at a million cycles: largest stress over strength. */
    ratioAtMillion: { kind: 'ratio', above: 0, below: 1 },
  },
  output: {
    /** Cycles to failure; 0 when the first load breaks it. */
    cycles: { kind: 'count', infinite: true },
    /** Largest stress over strength. */
    share: 'ratio',
    /** Whether cycles or the first load break it. */
    state: { oneOf: ['byCycles', 'atFirstLoad'] },
  },
  assumes: ['stress ratio about 0.1', 'slow enough not to heat the polymer', 'no endurance limit: polymers have none'],
  source: [
    { level: 'unverified', where: 'Basquin 1910 (power law)' },
    {
      level: 'published',
      where: 'Materials 2024, 17:5394, abstract (printed PLA of all print angles fall on one line when divided by static strength)',
    },
  ],
  valid: { 'at most ten million cycles': (_, { cycles }) => cycles <= 1e7 },
  si: ({ largest, strength, ratioAtMillion }) => {
    const share = largest / strength
    const breaks = share >= 1
    return { cycles: breaks ? 0 : share ** (6 / Math.log10(ratioAtMillion)), share, state: breaks ? 'atFirstLoad' : 'byCycles' }
  },
})

/**
 * Damage that blocks of different loads add up to (Palmgren-Miner rule): one is failure.
 * The order of loads is not seen by the rule; heavy loads first do more harm, and sums at failure scatter from 0.3 to 3.
 */
export const cumulativeDamage = /* @__PURE__ */ formula('materials.cumulativeDamage', {
  inputs: {
    /** Cycles of each block. */
    cycles: { list: { kind: 'count', min: 0 } },
    /** Cycles to failure at the load of each block. */
    lives: { list: { kind: 'count', above: 0 } },
    /** Sum at which failure is taken. */
    allowed: { kind: 'ratio', above: 0, default: 1 },
  },
  output: {
    /** Sum of the shares of life used. */
    damage: 'ratio',
    /** How often the whole row of blocks may be repeated; infinite when it does no damage. */
    repeats: { kind: 'count', infinite: true },
    /** Share of the damage from the worst block. */
    worstShare: 'ratio',
    /** Whether the row can be stood once. */
    state: { oneOf: ['holds', 'fails'] },
  },
  assumes: ['damage of a block is its share of life, whatever came before'],
  source: [{ level: 'unverified', where: 'Palmgren 1924; Miner 1945' }],
  requires: {
    lives: { accepts: 'must be as many as cycles', holds: ({ cycles, lives }) => cycles.length === lives.length },
  },
  si: ({ cycles, lives, allowed }) => {
    let damage = 0
    let worst = 0
    for (let i = 0; i < cycles.length; i++) {
      const part = (cycles[i] as number) / (lives[i] as number)
      damage += part
      if (part > worst) worst = part
    }
    return {
      damage,
      repeats: damage > 0 ? allowed / damage : Number.POSITIVE_INFINITY,
      worstShare: damage > 0 ? worst / damage : 0,
      state: damage <= allowed ? 'holds' : 'fails',
    }
  },
})
