import { slackTension } from 'limbwright/capstan'

export const tension = slackTension({ load: '500 mm', friction: 0.2, wrapAngle: '3 turn' })
