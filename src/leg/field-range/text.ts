import { type Kind, type Quantity, significant } from '../../units/index.js'
import { unitSigns } from '../assess/sentence.js'
import type { Decider, PassingPart, PassingRange, TriedValue } from './passing-range.js'

/** The range in sentences: what was tried, where every check has its required reserve, and what decides beyond each end. */
export function passingRangeText({ name, now, tried, passes }: PassingRange): string {
  const [first, last] = [tried[0], tried.at(-1)] as [TriedValue, TriedValue]
  return [
    `${name}. The leg has ${shown(now)}; ${tried.length} values from ${shown(first.value)} to ${shown(last.value)} were tried, all else as it is, at typical values.`,
    ...(passes.length === 0 ? [noneText(tried)] : passes.map(partText)),
  ].join('\n')
}

function partText({ from, to, below, above }: PassingPart): string {
  // Rounded into the range, so that the printed ends pass as well.
  const [low, high] = [rounded(from, Math.ceil), rounded(to, Math.floor)]
  return [
    `Every check has its required reserve from ${low} to ${high}.`,
    below === undefined ? `Values below ${low} were not tried.` : `Below: ${beyond(below)}.`,
    above === undefined ? `Values above ${high} were not tried.` : `Above: ${beyond(above)}.`,
  ].join('\n')
}

function noneText(tried: readonly TriedValue[]): string {
  const calculated = tried.filter(({ margin }) => margin !== undefined)
  const [some] = tried as [TriedValue, ...TriedValue[]]
  if (calculated.length === 0) return `The document allows none of these values: ${some.refused}.`
  const nearest = calculated.reduce((best, row) => ((row.margin as number) > (best.margin as number) ? row : best))
  return `At none of these values does every check have its required reserve. The nearest is ${shown(nearest.value)}, with ${significant(100 * (nearest.margin as number), 3)} % of the required reserve: ${beyond(nearest)}.`
}

const beyond = ({ decides, refused }: TriedValue): string =>
  decides === undefined ? `the document does not allow it, because ${refused}` : fails(decides)
const fails = ({ place, mode, caseTitle }: Decider): string => `the ${place} ${mode}, in the case "${caseTitle.toLowerCase()}"`

const shown = (value: Quantity<Kind>): string => unitSigns(String(value))

/** Four digits in the unit that the value is printed in. */
function rounded(value: Quantity<Kind>, round: (x: number) => number): string {
  const [, unit] = /^-?[\d.]+(?:e[-+]?\d+)? (.+)$/.exec(String(value)) ?? []
  const x = unit === undefined ? value.si : value.in(unit as never)
  if (x === 0) return shown(value)
  const step = 10 ** (Math.floor(Math.log10(Math.abs(x))) - 3)
  const inside = significant(round(x / step - (round === Math.ceil ? 1e-9 : -1e-9)) * step, 4)
  return unit === undefined ? inside : unitSigns(`${inside} ${unit}`)
}
