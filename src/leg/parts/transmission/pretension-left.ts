import { constant, line, type Use } from '../../run/index.js'

const YEAR = 31_557_600
const HOUR = 3600
export const year = constant('pretension.year', {
  title: 'length of a year',
  kind: 'time',
  typical: YEAR,
  source: { level: 'standard', where: 'Julian year, 365.25 d' },
})
const firstHour = constant('pretension.firstHour', {
  title: 'time after setting at which the pretension is read',
  kind: 'time',
  typical: HOUR,
  source: { level: 'assumption', where: 'a pretension is read within the hour after it was set' },
})

/**
 * Pretension that is left after some years at room temperature. Within the first year it falls by equal creep in each decade of time from the first hour on,
 * as `logarithmicPretensionLeft` of the cord module; beyond it each year takes the same share, which is the cautious end.
 */
const afterYears = line(
  'pretension after some years',
  { set: 'force', left: 'ratio', years: 'ratio', year: 'time', hour: 'time' },
  'force',
  'set · min(left ^ years, 1 / (1 + (1 / left − 1) · log(max(years · year, hour) / hour) / log(year / hour)))',
  (x) =>
    x.set *
    Math.min(
      x.left ** x.years,
      1 / (1 + ((1 / x.left - 1) * Math.log(Math.max(x.years * x.year, x.hour) / x.hour)) / Math.log(x.year / x.hour)),
    ),
)
/** Pretension after some years, of what was set and the share that a year leaves. */
export const pretensionAfter = (use: Use<never>, set: number, left: number, years: number): number =>
  use.run(afterYears, { set, left, years, year: use(year), hour: use(firstHour) })

/** The same over a year, in twelfths, for charts. */
export const pretensionInMonth = (set: number, left: number, months: number): number =>
  afterYears.si({ set, left, years: months / 12, year: YEAR, hour: HOUR })
