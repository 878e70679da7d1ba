import capstan = require('limbwright/capstan')
import units = require('limbwright/units')

const tension: units.Quantity<'force'> = capstan.slackTension({ load: units.N(500), friction: 0.2, wrapAngle: '3 turn' })

export = tension
