import { slackTension } from '../../src/capstan/index.js'
import { published } from './harness.js'

export const checks = [
  ...published(slackTension, {
    what: 'bollard, three turns',
    given: { load: '53033 N', friction: 0.311305, wrapAngle: '3 turn' },
    gives: '150 N',
    within: '0.01 %',
    source: { level: 'computed', where: 'belt-friction equation; statement after Beer & Johnston, Statics, sample problem 8.7' },
  }),
]
