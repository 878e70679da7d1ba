import * as z from 'zod'
import { bondedEnd, cord, drive } from './drive.js'
import { bearings, boss, motorBolts, pin, shaft, stackBolts } from './fastening.js'
import { text, whole } from './fields.js'
import { foot, joints, links, robot } from './frame.js'
import { ownMaterial } from './own-material.js'
import { controller, motor, plate, sink, supply } from './power.js'
import { environment, print, usage } from './setting.js'

/** The version of the document's layout that this library writes; older ones are brought up to it by `migrate`. */
export const SCHEMA_VERSION = 3

const names = z.string().regex(/^[A-Za-z][\w -]{0,40}$/)

/** The whole specification of one leg. */
export const legSchema = z.strictObject({
  schemaVersion: whole(1, SCHEMA_VERSION, 'Version of the layout of this document.').prefault(SCHEMA_VERSION),
  name: text('A name for the leg, as it heads the report.'),
  remark: text('Anything a reader should know first.').optional(),
  robot,
  links,
  joints,
  drives: z.strictObject({ hip: drive, knee: drive }),
  materials: z.record(names, ownMaterial).optional(),
  cords: z.record(names, cord),
  bondedEnd: bondedEnd.optional(),
  pins: z.strictObject({ hip: pin, knee: pin }),
  bosses: z.strictObject({ hip: boss, knee: boss }),
  bolts: z.strictObject({ stack: stackBolts, motor: motorBolts }),
  shaft,
  bearings,
  motor,
  plate,
  sink: sink.optional(),
  controller,
  foot,
  supply,
  environment: environment.prefault({}),
  print: print.prefault({}),
  usage: usage.prefault({}),
})

/** A specification as it may be written: quantities as text, pairs or `Quantity`. */
export type LegSpecification = z.input<typeof legSchema>
/** A specification as it was read. */
export type LegData = z.output<typeof legSchema>
