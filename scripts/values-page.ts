/** Writes the guide's page of material values; a test holds the committed page to it, and renews it with LIMBWRIGHT_UPDATE=1. */
import { isPrior, type Property } from '../src/formula/index.js'
import { allMaterials, type Material, priorsOf, propertiesOf } from '../src/materials/index.js'
import { type Kind, kindRow, Quantity } from '../src/units/index.js'

const plain = (text: string) => text.replaceAll('|', '\\|').replaceAll(/\s+/g, ' ')
const words = (name: string) =>
  name.replaceAll(/([A-Z])|(\d+)/g, (_, capital: string | undefined, number: string | undefined) => ` ${capital?.toLowerCase() ?? number}`)

/** Typical value and range in one unit, chosen so that the typical value reads well. */
function valueText({ kind, si, low, high }: Property): string {
  const { show } = kindRow(kind)
  const inUnit = (x: number, unit: string) => new Quantity(x, kind).in(unit as never)
  const unit = show.findLast((each) => Math.abs(inUnit(si, each)) >= 1) ?? show[0]!
  const digits = (x: number) => String(Number(inUnit(x, unit).toPrecision(3)))
  return `${digits(si)} (${digits(low)} to ${digits(high)})${unit === '1' ? '' : ` ${unit}`}`
}

function section(material: Material): string {
  const { share, names } = priorsOf(material)
  const all = propertiesOf(material)
  const rows = all.map(
    ([name, value]) =>
      `| ${words(name)} | ${valueText(value as Property<Kind>)} | ${plain(value.conditions) || '–'} | ${value.source.level}${isPrior(value.source) ? ' (prior)' : ''} | ${plain(value.source.where)} |`,
  )
  const curveRows = (['strength', 'modulus'] as const).flatMap((what) => {
    const curve = material[`${what}Curve`]
    return curve === undefined
      ? []
      : [
          `| ${what} over temperature | ${curve.points.map(([celsius, low, typical, high]) => `${celsius} °C: ${typical} (${low} to ${high})`).join('; ')} | ${plain(curve.conditions)} | ${curve.source.level}${isPrior(curve.source) ? ' (prior)' : ''} | ${plain(curve.source.where)} |`,
        ]
  })
  const remarks = (material.remarks ?? []).map((remark) => `- ${remark}`)
  return [
    `## ${material.name}`,
    '',
    `${material.title}. ${all.length} values, ${names.length} of them priors (${Math.round(100 * share)} %).`,
    ...(remarks.length > 0 ? ['', ...remarks] : []),
    '',
    '| property | typical (range) | holds for | evidence | source |',
    '|---|---|---|---|---|',
    ...rows,
    ...curveRows,
    '',
  ].join('\n')
}

/**
 * A page of Markdown with every value of the given materials, its range, conditions, source and kind of evidence, and for each material the share that
 * rests on priors: unverified numbers, common practice or assumptions, which a coupon of your own should replace.
 */
export function valuesPage(materials: readonly Material[] = allMaterials()): string {
  const overview = materials.map((material) => {
    const { share, names } = priorsOf(material)
    return `| ${material.name} | ${propertiesOf(material).length} | ${names.length} | ${Math.round(100 * share)} % |`
  })
  return [
    '---',
    'title: Values of the materials',
    '---',
    '',
    '# Values of the materials',
    '',
    'Generated from the tables. A prior is an unverified value, common practice or an assumption: replace it by a coupon of your own before a part depends on it.',
    '',
    '| material | values | priors | share |',
    '|---|---|---|---|',
    ...overview,
    '',
    ...materials.map(section),
  ].join('\n')
}
