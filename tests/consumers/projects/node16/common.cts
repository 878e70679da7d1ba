import bridge = require('limbwright/mathjs')
import capstan = require('limbwright/capstan')
import catalogue = require('limbwright/catalogue')
import fasteners = require('limbwright/fasteners')
import formula = require('limbwright/formula')
import kinematics = require('limbwright/kinematics')
import leg = require('limbwright/leg')
import materials = require('limbwright/materials')
import study = require('limbwright/study')
import thermal = require('limbwright/thermal')
import units = require('limbwright/units')
import all = require('limbwright')

const tension: units.Quantity<'force'> = capstan.slackTension({ load: units.N(500), friction: 0.2, wrapAngle: '3 turn' })
const everything = [bridge, catalogue, fasteners, formula, kinematics, leg, materials, study, thermal, all]

export = { tension, everything }
