import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import * as limbwright from 'limbwright'
import { slackTension } from 'limbwright/capstan'
import { InputError, mm, N } from 'limbwright/units'

const tension = slackTension({ load: N(500), friction: 0.2, wrapAngle: '3 turn' })
assert.ok(Math.abs(tension.si - 500 * Math.exp(-1.2 * Math.PI)) < 1e-12)
assert.throws(() => slackTension({ load: '500 mm', friction: 0.2, wrapAngle: '3 turn' }), InputError)

// Every subpath that the package names can be imported and gives something.
const manifest = createRequire(import.meta.url)('limbwright/package.json')
for (const subpath of Object.keys(manifest.exports)) {
  if (subpath.endsWith('.json')) continue
  const loaded = await import(`limbwright${subpath.slice(1)}`)
  assert.ok(Object.keys(loaded).length > 0, subpath)
}
assert.equal(limbwright.units.mm(5).si, mm(5).si)

// A quantity from the CommonJS copy passes in the ES copy: kinds are told by their tag.
const other = createRequire(import.meta.url)('limbwright/units')
assert.equal(slackTension({ load: other.N(500), friction: 0.2, wrapAngle: '3 turn' }).si, tension.si)
assert.ok(readFileSync(new URL(import.meta.resolve('limbwright/units')), 'utf8').length > 0)
