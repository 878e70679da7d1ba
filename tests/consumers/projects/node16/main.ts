import * as limbwright from 'limbwright'
import { slackTension } from 'limbwright/capstan'
import { catalogue } from 'limbwright/catalogue'
import * as fasteners from 'limbwright/fasteners'
import { type Formula, formula } from 'limbwright/formula'
import * as kinematics from 'limbwright/kinematics'
import * as leg from 'limbwright/leg'
import * as materials from 'limbwright/materials'
import { fromMathjs } from 'limbwright/mathjs'
import { solveFor } from 'limbwright/study'
import * as thermal from 'limbwright/thermal'
import { mm, type Quantity } from 'limbwright/units'

const tension: Quantity<'force'> = slackTension({ load: '500 N', friction: 0.2, wrapAngle: [3, 'turn'] })
const inNewtons: number = tension.in('N')

// A formula of the user's own is one too.
const doubled = formula('own.doubled', {
  inputs: { length: { kind: 'length', above: 0 } },
  output: 'length',
  source: [{ level: 'assumption', where: 'for this test' }],
  si: ({ length }) => 2 * length,
})
const typed: Formula<{ readonly length: { readonly kind: 'length'; readonly above: 0 } }, 'length'> = doubled

export default [inNewtons, typed({ length: mm(5) }), solveFor, fromMathjs, catalogue, fasteners, kinematics, leg, materials, thermal, limbwright]
