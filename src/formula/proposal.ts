import { type Kind, Quantity } from '../units/index.js'

/** One limit of a proposal: what it is, the value there, the limit, and the share of the limit that is used. */
export interface KeptLimit {
  /** The limited number, in plain words. */
  readonly what: string
  /** Value in the design. */
  readonly value: Quantity
  /** The limit, in the same kind. */
  readonly limit: Quantity
  /** Whether the value must stay below the limit or above it. */
  readonly must: 'stay below' | 'stay above'
  /** Share of the limit that is used: at most 1 where the limit is kept. */
  readonly use: number
  /** Whether the design was sized to just keep this limit, so that it is always used in full and governs nothing. */
  readonly sizedTo: boolean
}

/** A limit that a value must not exceed. */
export const atMost = (what: string, kind: Kind, value: number, limit: number): KeptLimit => ({
  what,
  value: new Quantity(value, kind),
  limit: new Quantity(limit, kind),
  must: 'stay below',
  use: shareOf(value, limit),
  sizedTo: false,
})

/** A limit that a value must not fall below. */
export const atLeast = (what: string, kind: Kind, value: number, limit: number, sizedTo = false): KeptLimit => ({
  what,
  value: new Quantity(value, kind),
  limit: new Quantity(limit, kind),
  must: 'stay above',
  use: shareOf(limit, value),
  sizedTo,
})

/**
 * A part over a whole: at most 1 where the part is no more than the whole, whatever their signs. Without any whole every part is too much. A value that is
 * not a number counts as broken.
 */
function shareOf(part: number, whole: number): number {
  if (part <= 0 && whole >= 0) return 0
  // Below zero the larger size is the smaller number.
  if (whole < 0) return part <= whole ? whole / part : Number.POSITIVE_INFINITY
  const share = part / whole
  return share >= 0 ? share : Number.POSITIVE_INFINITY
}

/** A design with the limits that it was held against. */
export interface Proposal<T> {
  readonly design: T
  readonly limits: readonly KeptLimit[]
  /** The limit with the largest share used. */
  readonly governing: KeptLimit
}

/** One input of a wish changed until it can be met, the others as they are. */
export interface NearestWish {
  readonly input: string
  readonly given: Quantity
  /** The nearest value that can be met; undefined where no value of this input alone helps. */
  readonly met: Quantity | undefined
}

/** Why a wish cannot be met. */
export interface Refusal<T> {
  /** The design that comes nearest. */
  readonly closest: Proposal<T>
  /** The limits it breaks, worst first. */
  readonly broken: readonly KeptLimit[]
  readonly nearest: readonly NearestWish[]
}

/** Designs that meet a wish, best first, or the reason why none does. */
export interface Proposals<T> {
  readonly state: 'met' | 'refused'
  readonly proposals: readonly Proposal<T>[]
  readonly refusal: Refusal<T> | undefined
  /** Findings, as sentences. */
  readonly message: string
}

/** A design of a search: its limits, and its cost by which designs that keep all limits are ranked. */
export interface ProposalCandidate<T> {
  readonly design: T
  readonly limits: readonly KeptLimit[]
  readonly cost: number
}

/** An input of a wish that may be changed to find the nearest one that can be met: its kind and the end where it is easiest. */
export interface Relaxable {
  /** Name of the input in the wish. */
  readonly input: string
  /** Kind of the input. */
  readonly kind: Kind
  /** The end where the wish is easiest to meet, SI. */
  readonly easiest: number
  /** How near to the edge the nearest value lies, SI. Default: a thousandth of it. */
  readonly within?: number
}

/** Rounding that counts as keeping a limit. */
const LIMIT_TOLERANCE = 1 + 1e-9

const worst = (limits: readonly KeptLimit[]): KeptLimit => {
  const counting = limits.filter(({ sizedTo, use }) => !sizedTo || use > LIMIT_TOLERANCE)
  return (counting.length > 0 ? counting : limits).reduce((a, b) => (b.use > a.use ? b : a))
}
const proposalOf = <T>({ design, limits }: ProposalCandidate<T>): Proposal<T> => ({ design, limits, governing: worst(limits) })
const keeps = ({ limits }: ProposalCandidate<unknown>) => limits.every(({ use }) => use <= LIMIT_TOLERANCE)

/** How many designs are listed, and steps of the search for the nearest wish. */
const MAX_LISTED = 12
const HALVINGS = 40

/**
 * Ranks the designs that keep all limits by cost. Where none does, the refusal names the limits that the nearest design breaks and, for each
 * relaxable input alone, the nearest value at which some design keeps all limits.
 */
export function proposalsOf<X extends object, T>(
  wish: X,
  designs: (wish: X) => readonly ProposalCandidate<T>[],
  relaxable: readonly Relaxable[],
): Proposals<T> {
  const all = designs(wish)
  const met = all.filter(keeps).sort((a, b) => a.cost - b.cost)
  if (met.length > 0) {
    const proposals = met.slice(0, MAX_LISTED).map(proposalOf)
    const first = proposals[0] as Proposal<T>
    return {
      state: 'met',
      proposals,
      refusal: undefined,
      message: `${met.length} of ${all.length} designs keep all limits. ${limitSentence(first.governing)} governs the first one.`,
    }
  }
  const closest = proposalOf(all.reduce((a, b) => (worst(b.limits).use < worst(a.limits).use ? b : a)))
  const broken = closest.limits.filter(({ use }) => !(use <= LIMIT_TOLERANCE)).sort((a, b) => b.use - a.use)
  const nearest = relaxable.map((limit) => nearestOf(wish, designs, limit))
  return { state: 'refused', proposals: [], refusal: { closest, broken, nearest }, message: refusalText(all.length, broken, nearest) }
}

function nearestOf<X extends object>(
  wish: X,
  designs: (wish: X) => readonly ProposalCandidate<unknown>[],
  { input, kind, easiest, within }: Relaxable,
): NearestWish {
  const given = (wish as Record<string, number>)[input] as number
  const at = (x: number) => designs({ ...wish, [input]: x }).some(keeps)
  const of = (x: number | undefined): NearestWish => ({
    input,
    given: new Quantity(given, kind),
    met: x === undefined ? undefined : new Quantity(x, kind),
  })
  if (!at(easiest)) return of(undefined)
  let [easy, hard] = [easiest, given]
  for (let i = 0; i < HALVINGS && Math.abs(easy - hard) > (within ?? 1e-3 * Math.min(Math.abs(easy), Math.abs(hard))); i++) {
    const middle = (easy + hard) / 2
    if (at(middle)) easy = middle
    else hard = middle
  }
  return of(easy)
}

/** A limit as a clause: what, the value, the limit. */
export const limitSentence = ({ what, value, limit, must }: KeptLimit): string =>
  `${what} of ${value} (${must === 'stay below' ? 'at most' : 'at least'} ${limit})`

function refusalText(tried: number, broken: readonly KeptLimit[], nearest: readonly NearestWish[]): string {
  const by = ({ use }: KeptLimit) => (Number.isFinite(use) ? `, ${use.toPrecision(3)} times the limit` : '')
  const possible = nearest.filter(({ met }) => met !== undefined)
  const ways = possible.map(({ input, given, met }) => `${input} ${met} instead of ${given}`)
  return [
    `None of ${tried} designs keeps all limits.`,
    `The nearest one breaks: ${broken.map((limit) => limitSentence(limit) + by(limit)).join('; ')}.`,
    ways.length > 0 ? `One change alone is enough: ${ways.join(', or ')}.` : 'No change of one input alone is enough.',
  ].join(' ')
}
