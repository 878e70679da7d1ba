const assert = require('node:assert/strict')
const limbwright = require('limbwright')
const { slackTension } = require('limbwright/capstan')
const { InputError } = require('limbwright/units')

const tension = slackTension({ load: '500 N', friction: 0.2, wrapAngle: '3 turn' })
assert.ok(Math.abs(tension.si - 500 * Math.exp(-1.2 * Math.PI)) < 1e-12)
assert.equal(limbwright.capstan.slackTension, slackTension)
assert.throws(() => slackTension({ load: '500 mm', friction: 0.2, wrapAngle: '3 turn' }), InputError)

const manifest = require('limbwright/package.json')
for (const subpath of Object.keys(manifest.exports)) {
  if (subpath.endsWith('.json')) continue
  assert.ok(Object.keys(require(`limbwright${subpath.slice(1)}`)).length > 0, subpath)
}
