import type { Leg } from '../document/describe.js'
import { knownOptions } from '../options.js'
import { documentOf } from '../report/html-page.js'
import { escaped, htmlSection } from '../report/html-parts.js'
import { assemblyPlan } from './assembly.js'
import { ASSEMBLY_OPTIONS, type AssemblyOptions } from './assembly-options.js'
import { assemblyPage } from './assembly-text.js'
import { controlSheet } from './control.js'
import { CONTROL_OPTIONS, type ControlOptions } from './control-options.js'
import { controlPage } from './control-text.js'
import { standPlan } from './stand.js'
import { standPage } from './stand-text.js'

/**
 * Assembly plan, control sheet and plan for the test stand of a leg as one self-contained HTML page for the workshop: opens without network,
 * prints, follows light and dark, works by keyboard and screen reader.
 */
export function htmlPlans(leg: Leg, options: AssemblyOptions & ControlOptions = {}): string {
  knownOptions('htmlPlans', options, [...ASSEMBLY_OPTIONS, ...CONTROL_OPTIONS])
  const { tail, beddingStrain, motorThreadDepth, ...ofControl } = options
  const pages = [
    ['assembly', assemblyPage(assemblyPlan(leg, given({ tail, beddingStrain, motorThreadDepth })))],
    ['control', controlPage(controlSheet(leg, given(ofControl)))],
    ['stand', standPage(standPlan(leg))],
  ] as const
  const links = pages.map(([id, { title }]) => `<li><a href="#${id}">${escaped(title)}</a></li>`).join('')
  const remark = leg.remark === undefined ? '' : `<p>${escaped(leg.remark)}</p>\n`
  return documentOf(
    `${leg.name}: workshop sheets`,
    `${remark}${pages.map(([id, page]) => htmlSection(id, page)).join('\n')}`,
    `<nav aria-label="Sheets" class="contents"><ul>${links}</ul></nav>\n`,
  )
}

/** Options without those left open. */
const given = <T extends object>(options: T) =>
  Object.fromEntries(Object.entries(options).filter(([, value]) => value !== undefined)) as { [N in keyof T]?: NonNullable<T[N]> }
