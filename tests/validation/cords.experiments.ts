import { bendEfficiency, bendRatio, endEfficiency, tensionRatio } from '../../src/capstan/index.js'
import { experiment, rangeOf } from './experiment.js'

const TUBES = 'R. Delaney, Physics for Roping Technicians (2022), p. 88'

export const experiments = [
  experiment({
    subject: 'cord',
    what: 'hollow braid over one bar: strength kept',
    kind: 'ratio',
    conditions: 'UHMWPE 12-strand braid of 3.2 mm, pulled slowly over 180 deg of a stainless bar, effective diameter about 10 mm',
    measured: { value: 0.6, low: 0.59, high: 0.61, scatter: 'single pulls, scale agreed within 1 %' },
    source: 'private test page on pulleys and bars',
    judges: 'model',
    predict: () => {
      const ratio = bendRatio.si({ centreLineRadius: 5e-3, cordDiameter: 3.2e-3 })
      const at = (leastBendRatio: number) => bendEfficiency.si({ bendRatio: ratio, leastBendRatio, exponent: 1 })
      const [one, other] = [at(8), at(5)]
      return { low: Math.min(one, other), typical: at(6), high: Math.max(one, other) }
    },
  }),
  experiment({
    subject: 'cord',
    what: 'bowline in conventional rope: strength kept',
    kind: 'ratio',
    conditions: 'break tests of conventional rope',
    measured: { value: 0.7, low: 0.65, high: 0.75, scatter: 'not stated; 5 % assumed either way' },
    source: 'Knots in Use, 4th ed., p. 9',
    judges: 'property',
    predict: () => rangeOf(endEfficiency('bowline')),
  }),
  ...(
    [
      ['A', 50, 'aluminium', 90, 98, 50],
      ['B', 50, 'aluminium', 90, 89, 49],
      ['A', 60, 'anodised aluminium', 90, 92, 53],
      ['B', 60, 'anodised aluminium', 90, 92, 52],
      ['A', 43, 'galvanised steel', 90, 103, 47],
    ] as const
  ).map(([rope, diameter, surface, wrap, raise, lower]) =>
    experiment({
      subject: 'cord',
      what: `rope ${rope} over a ${diameter} mm tube of ${surface}: force to raise over force to lower`,
      kind: 'ratio',
      conditions: `sheathed rope raised and lowered with 75 kg over a fixed tube, ${wrap} deg of wrap; friction from the raising force alone, a quarter either way`,
      measured: {
        value: raise / lower,
        low: (raise - 2) / (lower + 2),
        high: (raise + 2) / (lower - 2),
        scatter: 'readings of a scale to about 2 kg',
      },
      source: TUBES,
      ...(raise / lower > 1.7 && raise < 100
        ? { outside: 'friction is not constant: the less tense rope of lowering has the higher one, which Coulomb friction leaves out' }
        : {}),
      judges: 'model',
      // Twice the wrap between raising and lowering: the friction that the ratio of the load to the raising force gives must also give that of lowering.
      predict: () => {
        const friction = Math.log(raise / 75) / ((wrap * Math.PI) / 180)
        const at = (mu: number) => tensionRatio.si({ friction: mu, wrapAngle: (2 * wrap * Math.PI) / 180 })
        return { low: at(0.75 * friction), typical: at(friction), high: at(1.25 * friction) }
      },
    }),
  ),
]
