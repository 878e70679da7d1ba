import { exp, multiply, type Unit, unit } from 'mathjs'
import { slackTension } from '../src/capstan/index.js'
import { mm, N, quantity } from '../src/units/index.js'
import type { Row } from './harness.js'

const ours = N(500)
const arm = mm(165)
const theirs = unit(500, 'N')
const theirArm = unit(165, 'mm')
// Texts that differ, since an input remembers the last text it read.
const texts = Array.from({ length: 64 }, (_, i) => `${(5 + i / 7).toFixed(3)} mm` as `${number} mm`)
const angles = Array.from({ length: 64 }, (_, i) => `${(3 + i / 7).toFixed(3)} turn` as `${number} turn`)
const loads = Array.from({ length: 64 }, (_, i) => `${(500 + i / 7).toFixed(3)} N` as `${number} N`)

/** Results are kept, in both ways alike: a result that goes nowhere need not be made at all. */
const kept: unknown[] = new Array(64).fill(undefined)
const keeping = (one: (i: number) => unknown) => (times: number) => {
  for (let i = 0; i < times; i++) kept[i & 63] = one(i)
  return kept
}

export const rows: Row[] = [
  { work: 'unit function, mm(5)', ours: { name: 'limbwright', run: keeping((i) => mm(i)) } },
  {
    work: 'product of two quantities',
    ours: { name: 'limbwright', run: keeping(() => ours.times(arm)) },
    against: [{ name: 'mathjs', run: keeping(() => theirs.multiply(theirArm)), timesFaster: 100 }],
  },
  {
    work: "parsing '5.143 mm'",
    ours: { name: 'limbwright', run: keeping((i) => quantity('length', texts[i & 63]!)) },
    against: [{ name: 'mathjs', run: keeping((i) => unit(texts[i & 63]!)), timesFaster: 40 }],
  },
  {
    work: 'checked call of slackTension from text',
    ours: { name: 'limbwright', run: keeping((i) => slackTension({ load: loads[i & 63]!, friction: 0.2, wrapAngle: '3 turn' })) },
    against: [
      {
        name: 'with mathjs units',
        run: keeping((i) => {
          const load = unit(loads[i & 63]!)
          const angle = unit('1080 deg').toNumber('rad')
          // `to` is the check of dimensions.
          return (multiply(load, exp(-0.2 * angle)) as Unit).to('N')
        }),
        timesFaster: 30,
      },
    ],
  },
  {
    work: 'the same, no text twice',
    ours: {
      name: 'limbwright',
      run: keeping((i) => slackTension({ load: loads[i & 63]!, friction: 0.2, wrapAngle: angles[i & 63]! })),
    },
  },
]
