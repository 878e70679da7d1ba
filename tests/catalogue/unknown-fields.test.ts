// A misspelt field would have no effect: every record that a public function takes refuses names that it does not know, at every depth.
import { describe, expect, test } from 'vitest'
import * as capstanModule from '../../src/capstan/index.js'
import { catalogue } from '../../src/catalogue/index.js'
import * as fastenersModule from '../../src/fasteners/index.js'
import * as kinematicsModule from '../../src/kinematics/index.js'
import * as materialsModule from '../../src/materials/index.js'
import * as structuresModule from '../../src/structures/index.js'
import * as studyModule from '../../src/study/index.js'
import * as thermalModule from '../../src/thermal/index.js'
import { InputError } from '../../src/units/index.js'
import { checksById } from '../published/evidence.js'
import type { RecordCall } from './record-calls/call.js'
import { calls as capstan } from './record-calls/capstan.js'
import { calls as fasteners } from './record-calls/fasteners.js'
import { calls as kinematics } from './record-calls/kinematics.js'
import { calls as materials } from './record-calls/materials.js'
import { calls as study } from './record-calls/study.js'
import { calls as thermal } from './record-calls/thermal.js'

const CALLS: Readonly<Record<string, readonly RecordCall[]>> = { capstan, kinematics, fasteners, thermal, study, materials, structures: [] }
const MODULES: Readonly<Record<string, object>> = {
  capstan: capstanModule,
  kinematics: kinematicsModule,
  fasteners: fastenersModule,
  thermal: thermalModule,
  study: studyModule,
  materials: materialsModule,
  structures: structuresModule,
}

type Path = readonly (string | number)[]

const isRecord = (x: unknown): x is Record<string, unknown> =>
  typeof x === 'object' && x !== null && Object.getPrototypeOf(x) === Object.prototype && !('distribution' in x)

/** Places of all records in a value, itself among them. */
function recordsIn(x: unknown, path: Path = []): Path[] {
  if (Array.isArray(x)) return x.flatMap((each, i) => recordsIn(each, [...path, i]))
  if (!isRecord(x)) return []
  return [path, ...Object.keys(x).flatMap((key) => recordsIn(x[key], [...path, key]))]
}

/** A copy with one more field in the record at a place. */
function withField(x: unknown, [step, ...rest]: Path): unknown {
  if (step === undefined) return { ...(x as object), unknwnField: 1 }
  if (Array.isArray(x)) return x.map((each, i) => (i === step ? withField(each, rest) : each))
  return { ...(x as object), [step]: withField((x as Record<string, unknown>)[step], rest) }
}

/** What a call throws; nothing where it answers. */
async function errorOf(call: () => unknown): Promise<unknown> {
  try {
    await call()
    return undefined
  } catch (error) {
    return error
  }
}

async function expectRefusal(call: () => unknown, path: Path) {
  const error = await errorOf(call)
  expect(error, `unknown field in ${path.join('.') || 'the argument'}`).toBeInstanceOf(InputError)
  expect(String(error)).toContain('unknwnField')
}

describe.each(Object.entries(CALLS).flatMap(([module, calls]) => calls.map((each) => [`${module}.${each.name}`, each] as const)))(
  '%s',
  (_, { given, call, severalArguments }) => {
    test('refuses unknown fields', async () => {
      expect(await errorOf(() => call(given as never))).toBeUndefined()
      const places = recordsIn(given).filter((path) => path.length > 0 || !severalArguments)
      expect(places.length).toBeGreaterThan(0)
      for (const path of places) await expectRefusal(() => call(withField(given, path) as never), path)
    })
  },
)

const cases = [...catalogue.values()].flatMap((formula) =>
  (checksById.get(formula.id) ?? [])
    .filter(({ given }) => isRecord(given))
    .slice(0, 3)
    .map(({ given }) => ({ formula, given })),
)

test('every formula refuses unknown fields, at every depth', async () => {
  expect(new Set(cases.map(({ formula }) => formula.id)).size).toBeGreaterThan(300)
  for (const { formula, given } of cases)
    for (const path of recordsIn(given)) await expectRefusal(() => formula(withField(given, path) as never), [formula.id, ...path])
})

/** Functions that take no record of named fields: numbers, names, lists, objects that other functions make, and SI kernels, which check nothing. */
const WITHOUT_RECORDS: Readonly<Record<string, string>> = {
  capstan:
    'beltBacklashPrior cordFibre endEfficiency fibreNames loadPath steelCable steelCables tensionAlongWrapChart travelPath windupChart',
  kinematics:
    'crankFromRockerInto dampedInverse legPlaneOutlineSi reachChart rockerFromCrankInto stiffnessAlong strideTorqueChart torqueSpeedChart withinTurns workspaceOverlaps',
  fasteners:
    'bondPrior clearanceHole hexHead hexNut largeWasher lockNut metricFineThread metricThread parallelKeySize parallelPin prevailingTorque propertyClass smallBallBearing socketHead stainlessBreakingTorque washer',
  thermal: 'remedyChart temperatureChart torqueDutyChart',
  study: 'leastShare lognormal mergeSweep mostFailures normal scalarPaths triangular truncated uniform',
}

test.each(Object.entries(MODULES).filter(([module]) => module !== 'materials'))(
  '%s: every function is tried above, or takes no record',
  (module, exports) => {
    const functions = Object.entries(exports).flatMap(([name, value]) =>
      typeof value === 'function' && !('def' in value) && !/^class /.test(String(value)) ? [name] : [],
    )
    const tried = new Set((CALLS[module] as readonly RecordCall[]).map(({ name }) => name.split(/[. ]/)[0]))
    expect(functions.filter((name) => !tried.has(name)).sort()).toEqual((WITHOUT_RECORDS[module] ?? '').split(' ').filter(Boolean))
  },
)
